using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws fixing points and the finish line of a hem on a pattern.</summary>
/// <remarks>
/// At a hub the point lies on the side of the skirt, so that both pieces that meet there carry it at one place of their seam.
/// Where a facet ends on the finished edge without a skirt, pieces of three or more meet in one point: no mark is drawn there.
/// </remarks>
internal static class HemMarks
{
    // Common practice, no source: a limit of 500 mm must not make four bays of a chord of 1508 mm.
    private const double Tolerated = 1.03;

    // A skirt without a side there has its chord at that end, which runs nearly along the finished edge (cosine; 45 degrees).
    private const double FlattestSide = 0.7;

    // Less of the way up than this is the edge itself.
    private const double LeastShare = 1e-6;

    // A piece of the edge shorter than this is the cut-off tip of a facet at a hub, millimetres.
    internal const double ShortestBay = 100;

    /// <summary>Bays between fixing points along a piece of the hem; 0 on one too short to be held by itself.</summary>
    /// <param name="length">Its length, millimetres.</param>
    /// <param name="fixings">How far apart they may be.</param>
    internal static int Bays(double length, HemFixings fixings) =>
        length < ShortestBay ? 0 : Math.Max(1, (int)Math.Ceiling((length / (Tolerated * fixings.Spacing.Millimetres)) - 1e-9));

    /// <summary>The pattern with its hem's marks.</summary>
    /// <param name="pattern">As made.</param>
    /// <param name="faces">Labels of its facets, in their order.</param>
    /// <param name="hem">What was wished.</param>
    internal static Pattern Draw(Pattern pattern, ImmutableArray<string> faces, HemWish hem)
    {
        var runs = pattern.Runs.Where(run => run.Role == EdgeRole.Hem).ToArray();
        var lines = hem.Fitting is { Millimetres: > 0 } ? runs.Select(run => FinishLine(pattern, run)) : [];
        var points = hem.Fixings is { } fixings ? runs.SelectMany(run => Points(pattern, faces, run, fixings)) : [];
        return pattern with
        {
            Lines = [.. pattern.Lines, .. lines],
            Drills = [.. pattern.Drills, .. points.Select(Grid.Snap).Distinct().Select(point => new DrillMark(point, "fixing"))],
        };
    }

    private static MarkLine FinishLine(Pattern pattern, EdgeRun run) => new([pattern.SewLine[run.From], pattern.SewLine[run.To]], "finish line");

    private static IEnumerable<Point2> Points(Pattern pattern, ImmutableArray<string> faces, EdgeRun run, HemFixings fixings)
    {
        var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
        var bays = Bays(run.LengthMm, fixings);
        if (bays == 0)
        {
            yield break;
        }

        var up = (fixings.Height.Millimetres / Point2.Distance(from, to)) * (to - from).QuarterTurned();
        foreach (var bay in Enumerable.Range(1, bays - 1))
        {
            var foot = Point2.Between(from, to, (double)bay / bays);
            yield return foot + (ShareWithin(pattern.SewLine, foot, up) * up);
        }

        foreach (var (foot, top) in Sides(pattern, faces, (from, to)))
        {
            yield return Point2.Between(foot, top, Math.Min(1, fixings.Height.Millimetres / Point2.Distance(foot, top)));
        }
    }

    /// <summary>How much of the way up to a point may be gone: all, or half as far as the piece reaches where that is less, as in the sharp tip of a facet.</summary>
    private static double ShareWithin(ImmutableArray<Point2> sewLine, Point2 foot, Point2 up)
    {
        var reach = double.PositiveInfinity;
        for (var i = 0; i < sewLine.Length; i++)
        {
            var (from, edge) = (sewLine[i], sewLine[(i + 1) % sewLine.Length] - sewLine[i]);
            var across = Point2.Cross(up, edge);
            var (share, at) = (Point2.Cross(from - foot, edge) / across, Point2.Cross(from - foot, up) / across);
            // The edge of the hem itself runs across at once; edges along the way up are never met (not a number, or endless).
            reach = share > LeastShare && at is >= 0 and <= 1 ? Math.Min(reach, share) : reach;
        }

        return reach < 1 ? reach / 2 : 1;
    }

    /// <summary>The sides of the skirt that rise from the ends of a piece of the hem.</summary>
    private static IEnumerable<(Point2 Foot, Point2 Top)> Sides(Pattern pattern, ImmutableArray<string> faces, (Point2 From, Point2 To) hem)
    {
        var rings = pattern.Facets;
        var at = Enumerable.Range(0, rings.Length).Where(face => Shell.IsSkirt(faces[face]))
            .SelectMany(face => Enumerable.Range(0, rings[face].Length).Select(corner => (Ring: rings[face], Corner: corner)))
            .FirstOrDefault(place => place.Ring[place.Corner] == hem.From && place.Ring[(place.Corner + 1) % place.Ring.Length] == hem.To);
        if (at.Ring.IsDefault)
        {
            return [];
        }

        var count = at.Ring.Length;
        (Point2 Foot, Point2 Top)[] sides = [(hem.From, at.Ring[(at.Corner + count - 1) % count]), (hem.To, at.Ring[(at.Corner + 2) % count])];
        var along = (hem.To - hem.From).Unit();
        var rims = pattern.Runs.Where(run => run.Role == EdgeRole.Rim).ToArray();
        bool IsAtRim(Point2 foot) => rims.Any(run => pattern.SewLine[run.From] == foot || pattern.SewLine[run.To] == foot);
        return sides.Where(side => !IsAtRim(side.Foot) && Math.Abs(Point2.Dot(along, (side.Top - side.Foot).Unit())) < FlattestSide);
    }
}
