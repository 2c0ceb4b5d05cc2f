using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Where the notches of a seam stand.</summary>
/// <remarks>
/// Main notches divide the seam evenly, 300 mm apart at most (common practice, no source). Companions stand before the
/// first of them, on the side of the over piece's start: they tell the two ends of a seam apart, and their distance and
/// number tell apart seams of nearly equal length.
/// </remarks>
internal static class MarkPattern
{
    private const double LargestSpacing = 300;

    // A seam shorter than this holds no notch: its ends are its marks, millimetres.
    private const double ShortestMarked = 20;

    // Below this length the companions move together in proportion, millimetres.
    private const double FullSize = 150;

    private const double FirstGap = 12;
    private const double GapStep = 6;
    private const int GapsPerCompanion = 6;
    private const double LastGap = FirstGap + (GapStep * (GapsPerCompanion - 1));

    /// <summary>Distances from the start of the over side's run, rising, millimetres.</summary>
    /// <param name="length">Length of the seam, millimetres.</param>
    /// <param name="code">Number of the pattern, 0 or more.</param>
    /// <param name="bothWays">Whether equal pieces use the seam from either end, so that the marks must read alike from both.</param>
    internal static ImmutableArray<double> At(double length, int code, bool bothWays)
    {
        if (length < ShortestMarked)
        {
            return [];
        }

        var bays = Math.Max(2, (int)Math.Ceiling(length / LargestSpacing));
        var main = Enumerable.Range(1, bays - 1).Select(i => length * i / bays).ToArray();
        var scale = Math.Min(1, length / FullSize);
        // More companions than fit before the first main notch would run off the seam: frames measured hub by hub have hundreds of
        // lengths within 10 mm, and then patterns come again.
        var most = Math.Max(1, 1 + (int)(((main[0] / scale) - LastGap - FirstGap) / FirstGap));
        code %= most * GapsPerCompanion;
        var gap = scale * (FirstGap + (GapStep * (code % GapsPerCompanion)));
        var companions = Enumerable.Range(0, 1 + (code / GapsPerCompanion)).Select(i => gap + (scale * FirstGap * i)).ToArray();
        var before = companions.Select(distance => main[0] - distance);
        var after = bothWays ? companions.Select(distance => main[^1] + distance) : [];
        return [.. main.Concat(before).Concat(after).Order()];
    }
}
