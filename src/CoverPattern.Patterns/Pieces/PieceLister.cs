using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Lists the pieces of all covers and who is sewn to whom.</summary>
internal static class PieceLister
{
    /// <summary>One piece a draft and cover.</summary>
    /// <param name="drafts">Drafts in order of their labels.</param>
    /// <param name="sorted">The same, sorted by equal shape.</param>
    /// <param name="subdivision">Knows the two sides of every arc.</param>
    /// <param name="covers">Number of equal covers; with more than one, labels begin with the cover.</param>
    internal static ImmutableArray<Piece> List(
        ImmutableArray<PieceDraft> drafts, SortedDrafts sorted, Subdivision subdivision, int covers)
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
            var runs = match.RunOf.Select(run => MakeRun(draft.Runs[run], prefix));
            return new Piece(prefix + draft.Label, sorted.PatternId(model), match.Mirrored, [.. runs], [.. match.FaceOf.Select(face => draft.FaceLabels[face])]);
        }

        PieceRun MakeRun(DraftRun run, string prefix)
        {
            var arc = subdivision.Arcs[run.Arc];
            if (arc.Second is null)
            {
                return new PieceRun(arc.Label, arc.Role, Partner: null);
            }

            var other = place[arc.First == run.PatchSide ? arc.Second.Value : arc.First];
            return new PieceRun(arc.Label, arc.Role, new PartnerRun(prefix + other.Label, other.Run));
        }
    }

    /// <summary>For every edge of a patch on an outline: the piece it belongs to and the index of the run on its pattern.</summary>
    private static Dictionary<PatchSide, (string Label, int Run)> Places(ImmutableArray<PieceDraft> drafts, SortedDrafts sorted)
    {
        var places = new Dictionary<PatchSide, (string, int)>();
        foreach (var (draft, i) in drafts.Select((draft, i) => (draft, i)))
        {
            foreach (var (run, onPattern) in sorted.Matches[i].Match.RunOf.Select((run, onPattern) => (run, onPattern)))
            {
                places.Add(draft.Runs[run].PatchSide, (draft.Label, onPattern));
            }
        }

        return places;
    }
}
