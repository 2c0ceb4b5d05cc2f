using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>How to set a sew line out with two tapes: a base, and for every other corner two arcs from the ends of the base.</summary>
internal static class TapeSetting
{
    // Arcs that cross under less than 20 degrees miss by three times the tapes' error (1/sin): own choice.
    private const double FlattestSine = 0.342;

    /// <summary>The ends of the edges of the outline, as indexes into the sew line; a curve has corners only where it ends.</summary>
    public static int[] Corners(Pattern pattern) => [.. pattern.Runs.Select(run => run.From).Distinct()];

    /// <summary>Two corners of the sew line from which all others are set out.</summary>
    /// <returns>
    /// The longest straight edge, of equal ones the first. Where arcs from it would cross too flatly to be set out well,
    /// as on a long band, the two corners from which the flattest crossing is steepest. For a closed curve its first
    /// corner and the one farthest from it.
    /// </returns>
    public static (int From, int To) Base(Pattern pattern)
    {
        var corners = Corners(pattern);
        if (corners.Length < 3)
        {
            var farthest = Enumerable.Range(0, pattern.SewLine.Length).MaxBy(corner => Point2.Distance(pattern.SewLine[corners[0]], pattern.SewLine[corner]));
            return (corners[0], farthest);
        }

        var edge = pattern.Runs.Where(run => IsStraight(pattern, run)).MaxBy(run => run.LengthMm);
        return edge is not null && Steepness(pattern, corners, (edge.From, edge.To)) >= FlattestSine
            ? (edge.From, edge.To)
            : Spans(corners).MaxBy(span => Steepness(pattern, corners, span));
    }

    /// <summary>The steps in words, one a line; none for an outline of fewer than three corners.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="lengths">Printed lengths of edges.</param>
    public static IEnumerable<string> Steps(Pattern pattern, SideLengths lengths)
    {
        var corners = Corners(pattern);
        if (pattern.Runs.Any(run => run.IsClosed))
        {
            yield return $"{char.ToUpperInvariant(RoundShapes.Size(pattern.SewLine, lengths.Ruler)[0])}{RoundShapes.Size(pattern.SewLine, lengths.Ruler)[1..]}";
            foreach (var cutout in pattern.Cutouts)
            {
                yield return $"Hole for {cutout.Purpose}: {RoundShapes.Size(cutout.Rim, lengths.Ruler)} about the same centre";
            }

            yield break;
        }

        if (corners.Length < 3)
        {
            yield break;
        }

        var bottom = Base(pattern);
        yield return $"Base {Words.Corners(bottom.From, bottom.To)}: {lengths.Between(pattern, bottom.From, bottom.To)}";
        foreach (var corner in corners.Where(corner => corner != bottom.From && corner != bottom.To))
        {
            yield return $"Corner {Printed.Count(corner + 1)}: {Arc(bottom.From)} and {Arc(bottom.To)}{(IsRight(corner) ? ", right of the base" : string.Empty)}";

            string Arc(int end) =>
                $"{lengths.Between(pattern, end, corner)} from {Printed.Count(end + 1)}{(IsEdge(pattern, end, corner) ? string.Empty : " (diagonal)")}";
        }

        foreach (var cutout in pattern.Cutouts)
        {
            yield return $"Hole for {cutout.Purpose}: {RoundShapes.Size(cutout.Rim, lengths.Ruler)}, centre {Centre(cutout, bottom.From)} and {Centre(cutout, bottom.To)}";
        }

        string Centre(Cutout cutout, int corner) =>
            $"{lengths.Ruler.Of(Point2.Distance(Rings.Bounds(cutout.Rim).Centre, pattern.SewLine[corner]))} from {Printed.Count(corner + 1)}";

        bool IsRight(int corner) => Point2.Cross(
            pattern.SewLine[bottom.To] - pattern.SewLine[bottom.From], pattern.SewLine[corner] - pattern.SewLine[bottom.From]) < 0;
    }

    /// <summary>Distances to measure when the outline is drawn: both diagonals of four corners, of more the two longest spans that are no edge.</summary>
    /// <returns>None for three corners: their edges are all there is.</returns>
    public static IEnumerable<string> Checks(Pattern pattern, SideLengths lengths) => Spans(Corners(pattern))
        .Where(span => !IsEdge(pattern, span.From, span.To))
        .OrderByDescending(span => Point2.Distance(pattern.SewLine[span.From], pattern.SewLine[span.To]))
        .ThenBy(span => span)
        .Take(2)
        .Select(span => $"{Words.Corners(span.From, span.To)}: {lengths.Between(pattern, span.From, span.To)}");

    /// <summary>Whether an edge of the outline is one straight step of the sew line.</summary>
    public static bool IsStraight(Pattern pattern, EdgeRun run) => (run.From + 1) % pattern.SewLine.Length == run.To;

    private static IEnumerable<(int From, int To)> Spans(int[] corners) =>
        from i in Enumerable.Range(0, corners.Length)
        from j in Enumerable.Range(i + 1, corners.Length - i - 1)
        select (corners[i], corners[j]);

    private static bool IsEdge(Pattern pattern, int one, int other) =>
        pattern.Runs.Any(run => (run.From == one && run.To == other) || (run.From == other && run.To == one));

    /// <summary>Least sine of the angle under which the two arcs of a corner cross.</summary>
    private static double Steepness(Pattern pattern, int[] corners, (int From, int To) ends)
    {
        var (from, to) = (pattern.SewLine[ends.From], pattern.SewLine[ends.To]);
        return corners.Where(corner => corner != ends.From && corner != ends.To)
            .Min(corner => Math.Abs(Point2.Cross((from - pattern.SewLine[corner]).Unit(), (to - pattern.SewLine[corner]).Unit())));
    }
}
