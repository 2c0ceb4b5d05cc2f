using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Lists the pieces of all covers and who is sewn to whom.</summary>
internal static class PieceLister
{
    /// <summary>One piece a draft and cover.</summary>
    /// <param name="drafts">Drafts in order of their labels.</param>
    /// <param name="sorted">The same, sorted by equal shape.</param>
    /// <param name="covers">Number of equal covers; with more than one, labels begin with the cover.</param>
    internal static ImmutableArray<Piece> List(
        ImmutableArray<PieceDraft> drafts, SortedDrafts sorted, int covers)
    {
        var place = Places(drafts, sorted);
        var digits = covers.ToString(CultureInfo.InvariantCulture).Length;
        var pieces = ImmutableArray.CreateBuilder<Piece>(covers * drafts.Length);
        for (var cover = 1; cover <= covers; cover++)
        {
            var prefix = covers == 1 ? string.Empty : "C" + cover.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0') + " ";
            pieces.AddRange(drafts.Select((draft, i) => MakePiece(draft, i, prefix)));
        }

        return pieces.ToImmutable();

        Piece MakePiece(PieceDraft draft, int i, string prefix)
        {
            var (model, match) = sorted.Matches[i];
            var runs = match.RunOf.Select(run => MakeRun(draft.AllRuns[run], prefix));
            return new Piece(prefix + draft.Label, sorted.PatternId(model), match.Mirrored, [.. runs], [.. match.FaceOf.Select(face => draft.FaceLabels[face])]);
        }

        PieceRun MakeRun(DraftRun run, string prefix)
        {
            var partner = place.TryGetValue(run.At.Opposite, out var other) ? new PartnerRun(prefix + other.Label, other.Run) : null;
            return new PieceRun(run.At.Arc, run.Class.Role, partner);
        }
    }

    /// <summary>For every side of a line on the cover: the piece it belongs to and the index of the run on its pattern.</summary>
    private static Dictionary<ArcSide, (string Label, int Run)> Places(ImmutableArray<PieceDraft> drafts, SortedDrafts sorted)
    {
        var places = new Dictionary<ArcSide, (string, int)>();
        foreach (var (draft, i) in drafts.Select((draft, i) => (draft, i)))
        {
            foreach (var (run, onPattern) in sorted.Matches[i].Match.RunOf.Select((run, onPattern) => (run, onPattern)))
            {
                places.Add(draft.AllRuns[run].At, (draft.Label, onPattern));
            }
        }

        return places;
    }
}
