using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Decides which marks may be pierced, where the job asks for it: those under a patch or in an allowance; all others are drawn.</summary>
/// <remarks>A hole on the sew line lets water in as one inside the piece does: only beyond the line, by the hole's own size, it lies in the allowance.</remarks>
internal static class Piercing
{
    // A patch covers a hole when so much cloth lies round it, enough for a row of stitches; the program's own choice, millimetres.
    private const double UnderPatch = 5;

    /// <summary>The pattern with the marks pierced that may be.</summary>
    /// <param name="pattern">With all its marks.</param>
    /// <param name="draft">The draft that it was made from; tells where patches of hubs lie.</param>
    internal static Pattern On(Pattern pattern, PieceDraft draft)
    {
        var patches = Patches(pattern, draft).ToArray();
        return pattern with { Drills = [.. pattern.Drills.Select(drill => drill with { IsPierced = IsInCloth(pattern, drill.At) && (IsUnder(patches, drill.At) || IsInAllowance(pattern, drill.At)) })] };
    }

    /// <summary>Notices: what is pierced, and what may not be though it was asked for.</summary>
    internal static IEnumerable<Notice> Notices(Job job, PieceSet set)
    {
        if (!job.Marks.Pierce)
        {
            yield break;
        }

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var marks = set.Pieces.SelectMany(piece => patterns[piece.Pattern].Drills.Select(drill => (piece.Label, Mark: drill))).ToArray();
        var (pierced, drawn) = (marks.Where(mark => mark.Mark.IsPierced).ToArray(), marks.Where(mark => !mark.Mark.IsPierced).ToArray());
        if (pierced.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Note,
                "marks-pierced",
                pierced[0].Label,
                FormattableString.Invariant($"{Counted(pierced, job.Covers)} on one cover are pierced, {DrillMark.HoleDiameter:0.#} mm: they lie under a patch or in an allowance."));
        }

        if (drawn.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "marks-not-pierced",
                drawn[0].Label,
                FormattableString.Invariant($"{Counted(drawn, job.Covers)} on one cover may not be pierced, though marks.pierce asks for it: they lie neither under a patch nor in an allowance, {DrillMark.HoleDiameter / 2:0.#} mm beyond the sew line at least, and a hole there leaks. They are drawn. Patches over hubs (marks.hubPatches) cover what lies near these."));
        }
    }

    private static string Counted((string Label, DrillMark Mark)[] marks, int covers) => string.Join(", ", marks.GroupBy(mark => mark.Mark.Purpose, StringComparer.Ordinal)
        .OrderBy(group => group.Key, StringComparer.Ordinal)
        .Select(group => FormattableString.Invariant($"{group.Count() / covers} marks \"{group.Key}\"")));

    private static IEnumerable<(Point2 Centre, double Radius)> Patches(Pattern pattern, PieceDraft draft) =>
        pattern.Runs.Select((run, i) => (pattern.SewLine[run.From], draft.Runs[i].PatchRadius))
            .Concat(InsideCorner.Find(pattern).Select(corner => (corner.At, ClipPatches.CutRadius(pattern, draft, corner))))
            .Where(patch => patch.Item2 > 0);

    private static bool IsUnder((Point2 Centre, double Radius)[] patches, Point2 at) =>
        Array.Exists(patches, patch => Point2.Distance(patch.Centre, at) + (DrillMark.HoleDiameter / 2) + UnderPatch <= patch.Radius);

    private static bool IsInCloth(Pattern pattern, Point2 at) =>
        ExactPredicates.Locate(Rings.ToSteps(pattern.CutLine), Grid.ToSteps(at)) > 0 && ToRing(pattern.CutLine, at) >= DrillMark.HoleDiameter / 2;

    /// <summary>Whether the whole hole lies beyond the sew line.</summary>
    private static bool IsInAllowance(Pattern pattern, Point2 at) =>
        ExactPredicates.Locate(Rings.ToSteps(pattern.SewLine), Grid.ToSteps(at)) < 0 && ToRing(pattern.SewLine, at) >= DrillMark.HoleDiameter / 2;

    private static double ToRing(ImmutableArray<Point2> ring, Point2 at) =>
        Enumerable.Range(0, ring.Length).Min(i => Segments.Distance(ring[i], ring[(i + 1) % ring.Length], at));
}
