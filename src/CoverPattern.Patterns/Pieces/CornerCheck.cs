using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Tells where a sew line bends inward more than its seam can follow.</summary>
internal static class CornerCheck
{
    // Folder-felled and wedge-welded seams are made in one run and follow hardly any bend; degrees, common practice, no source.
    private const double LargestInOneRun = 10;
    private const double Largest = 30;

    // As many as are read at a glance; the drawings have them all.
    private const int MostNamed = 4;

    /// <summary>One notice for all corners over the limit of their seams.</summary>
    /// <param name="job">Says how each make-up is made.</param>
    /// <param name="set">The patterns and pieces of all covers.</param>
    internal static IEnumerable<Notice> Notices(Job job, PieceSet set)
    {
        var makeUps = job.SeamMakeUps.DistinctBy(makeUp => makeUp.Name, StringComparer.Ordinal).ToDictionary(makeUp => makeUp.Name, StringComparer.Ordinal);
        var over = set.Patterns.ToDictionary(pattern => pattern.Id, pattern => Over(pattern, makeUps), StringComparer.Ordinal);
        var corners = set.Pieces.SelectMany(piece => over[piece.Pattern].Select(corner => (piece.Label, Corner: corner))).ToArray();
        if (corners.Length > 0)
        {
            var (label, worst) = corners.MaxBy(entry => entry.Corner.Bend);
            var counts = corners.GroupBy(entry => (entry.Corner.MakeUp, entry.Corner.Limit)).OrderBy(group => group.Key.MakeUp, StringComparer.Ordinal)
                .Select(group => Count(group.Count() / job.Covers) + FormattableString.Invariant($" by more than {group.Key.Limit:0} degrees, the most that a {group.Key.MakeUp} seam follows, on {Named(group.Select(entry => entry.Label))}"));
            yield return new Notice(
                NoticeLevel.Warning,
                "inside-corners",
                label,
                FormattableString.Invariant($"Piece {label}: an edge that is sewn bends inward by {worst.Bend:0.0} degrees; {string.Join("; ", counts)}. Cut the row or group at these hubs, or clip to the mark, pivot there and put the patch under the clip."));
        }
    }

    private static string Count(int corners) =>
        corners == 1 ? "1 corner of one cover bends" : FormattableString.Invariant($"{corners} corners of one cover bend");

    /// <summary>The first few of the pieces, in their order and without their cover, for covers are equal; and how many there are besides.</summary>
    private static string Named(IEnumerable<string> labels)
    {
        string[] each = [.. labels.Select(label => label[(label.LastIndexOf(' ') + 1)..]).Distinct(StringComparer.Ordinal)];
        var rest = each.Length - MostNamed;
        return rest > 0 ? FormattableString.Invariant($"{string.Join(", ", each.Take(MostNamed))} and {rest} more") : string.Join(", ", each);
    }

    /// <summary>Corners over the limit of the seam that follows them worse; a hem beside it has none of its own.</summary>
    private static ImmutableArray<(double Bend, double Limit, string MakeUp)> Over(Pattern pattern, Dictionary<string, MakeUp> makeUps) =>
    [
        .. from corner in InsideCorner.Find(pattern)
           where !corner.IsSlitEnd
           let strictest = new[] { corner.Run, (corner.Run + pattern.Runs.Length - 1) % pattern.Runs.Length }
               .Where(run => pattern.Runs[run].Role == EdgeRole.Seam).Select(run => makeUps[pattern.Runs[run].MakeUp]).MinBy(LimitOf)!
           where corner.InsideDegrees - 180 > LimitOf(strictest)
           select (corner.InsideDegrees - 180, LimitOf(strictest), strictest.Name),
    ];

    private static double LimitOf(MakeUp makeUp) => makeUp.Form == MakeUpForm.FolderFelled || makeUp.IsWelded ? LargestInOneRun : Largest;
}
