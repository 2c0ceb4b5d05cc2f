using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Tells where a sew line bends inward more than its seam can follow.</summary>
internal static class CornerCheck
{
    // Folder-felled and wedge-welded seams are made in one run and follow hardly any bend; degrees, common practice, no source.
    private const double LargestInOneRun = 10;
    private const double Largest = 30;

    /// <summary>One notice for all corners over the limit of their seams.</summary>
    /// <param name="job">Its make-up decides where a run does not tell.</param>
    /// <param name="set">The patterns and pieces of all covers.</param>
    internal static IEnumerable<Notice> Notices(Job job, PieceSet set)
    {
        var limit = job.Seam.MakeUp.Form is MakeUpForm.FolderFelled or MakeUpForm.Welded or MakeUpForm.SplitWelded ? LargestInOneRun : Largest;
        var over = set.Patterns.ToDictionary(pattern => pattern.Id, pattern => Over(pattern, limit), StringComparer.Ordinal);
        var worst = set.Pieces.Select(piece => (piece.Label, Corners: over[piece.Pattern])).Where(entry => !entry.Corners.IsEmpty)
            .Select(entry => (entry.Label, Bend: entry.Corners.Max(corner => corner.InsideDegrees) - 180)).ToArray();
        if (worst.Length > 0)
        {
            var (label, bend) = worst.MaxBy(entry => entry.Bend);
            var count = set.Pieces.Sum(piece => over[piece.Pattern].Length) / job.Covers;
            yield return new Notice(
                NoticeLevel.Warning,
                "inside-corners",
                label,
                FormattableString.Invariant($"Piece {label}: an edge that is sewn bends inward by {bend:0.0} degrees; {count} corners of one cover bend by more than {limit:0} degrees, the most that a {job.Seam.MakeUp.Name} seam follows in one run. Cut the row at these hubs, or clip to the mark, pivot there and put a patch under the clip."));
        }
    }

    private static ImmutableArray<InsideCorner> Over(Pattern pattern, double limit) =>
        [.. InsideCorner.Find(pattern).Where(corner => !corner.IsSlitEnd && corner.InsideDegrees - 180 > limit)];
}
