using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws on the pieces along the roof's edge where load tabs are sewn on, and which side of the zip they bear.</summary>
public static class RoofMarks
{
    /// <summary>Purpose of the line along which a load tab is sewn on.</summary>
    public const string TabPurpose = "load tab";

    /// <summary>Purpose of the mark on the roof's side: the half of the zip with the pin.</summary>
    public const string PinPurpose = "zip: pin side";

    /// <summary>Purpose of the mark on the wall's side: the half with the box.</summary>
    public const string BoxPurpose = "zip: box side";

    /// <summary>Purpose of the line on the wall to which the roof's flap comes down; the loop half of hook and loop lies above it.</summary>
    public const string FlapPurpose = "edge of the roof's flap";

    // Beside a hub, not on it, for seams, stops of zips and loops lie there (own choice), millimetres from the hub.
    private const double FromHub = 80;

    // From the sew line inward: beyond what is turned back, and below the flap on the wall (own choices), millimetres.
    private const double StrokeFrom = 25;
    private const double StrokeTo = 75;
    private const double ToEdge = 5;
    private const double HandAt = 10;

    /// <summary>Where tabs stand along a strut, from one end, the same from the other, millimetres: beside both hubs and at most the given distance apart.</summary>
    /// <param name="length">Length of the strut's seam, millimetres.</param>
    /// <param name="most">Largest distance, millimetres.</param>
    public static ImmutableArray<double> TabsAlong(double length, double most)
    {
        var inner = length - (2 * FromHub);
        if (inner <= 0)
        {
            return [length / 2];
        }

        var count = Math.Max(1, (int)Math.Ceiling((inner / most) - 1e-9));
        return [.. Enumerable.Range(0, count + 1).Select(i => FromHub + (i * inner / count))];
    }

    /// <summary>The pattern with its marks, without tabs where their distance is 0; patterns without an edge of the roof's line stay as they are.</summary>
    internal static Pattern On(Pattern pattern, Job job)
    {
        if (job.Roof is not { } wish || pattern.Runs.All(run => run.MakeUp != RoofWish.ZipName))
        {
            return pattern;
        }

        EdgeRun[] runs = [.. pattern.Runs.Where(run => run.MakeUp == RoofWish.ZipName)];
        return pattern with
        {
            Lines =
            [
                .. pattern.Lines,
                .. runs.SelectMany(run => Tabs(pattern, run, wish.Tabs.Millimetres)),
                .. runs.Where(run => run.Side == EdgeSide.Under).SelectMany(run => Flap(pattern, run, wish.Flap.Millimetres)),
            ],
            Drills = [.. pattern.Drills, .. runs.Select(run => Hand(pattern, run))],
        };
    }

    private static IEnumerable<MarkLine> Tabs(Pattern pattern, EdgeRun run, double most)
    {
        var (from, along, inward) = Along(pattern, run);
        foreach (var at in most > 0 ? TabsAlong(run.LengthMm, most) : [])
        {
            var foot = from + (at * along);
            var reach = Math.Min(StrokeTo, Room(pattern, run, foot, 2 * StrokeTo * inward) - ToEdge);
            yield return new MarkLine([Grid.Snap(foot + (Math.Min(StrokeFrom, reach / 2) * inward)), Grid.Snap(foot + (reach * inward))], TabPurpose);
        }
    }

    private static DrillMark Hand(Pattern pattern, EdgeRun run)
    {
        var (from, along, inward) = Along(pattern, run);
        return new DrillMark(Grid.Snap(from + (run.LengthMm / 2 * along) + (HandAt * inward)), run.Side == EdgeSide.Over ? PinPurpose : BoxPurpose);
    }

    private static (Point2 From, Point2 Along, Point2 Inward) Along(Pattern pattern, EdgeRun run)
    {
        var along = (pattern.SewLine[run.To] - pattern.SewLine[run.From]).Unit();
        return (pattern.SewLine[run.From], along, new Point2(-along.Y, along.X));
    }

    /// <summary>From edge to edge of the piece where the flap's lower edge lies on it, the part nearest to the middle of the roof's edge; on the next pieces, beyond the hubs, it goes on.</summary>
    private static IEnumerable<MarkLine> Flap(Pattern pattern, EdgeRun run, double width)
    {
        var (from, along, inward) = Along(pattern, run);
        Point2 At(double on) => Grid.Snap(from + (width * inward) + (on * along));
        return Beside(pattern.SewLine, from + (width * inward), along).Where(part => part.To - part.From > 2 * ToEdge)
            .OrderBy(part => Math.Abs(part.From + part.To - run.LengthMm)).Take(1)
            .Select(part => new MarkLine([At(part.From + ToEdge), At(part.To - ToEdge)], FlapPurpose));
    }

    /// <summary>The parts of an endless line that lie within a ring, millimetres along it.</summary>
    private static (double From, double To)[] Beside(ImmutableArray<Point2> ring, Point2 on, Point2 along)
    {
        double Left(Point2 point) => Point2.Cross(along, point - on);
        double[] crossings =
        [
            .. ring.Select((point, i) => (From: point, To: ring[(i + 1) % ring.Length])).Where(step => Left(step.From) < 0 != Left(step.To) < 0)
                .Select(step => Point2.Dot(along, step.From + (Left(step.From) / (Left(step.From) - Left(step.To)) * (step.To - step.From)) - on)).Order(),
        ];
        return [.. crossings.Chunk(2).Select(pair => (pair[0], pair[1]))];
    }

    /// <summary>How far the piece goes on from a point within it or on one of its edges, millimetres; at most as far as asked.</summary>
    private static double Room(Pattern pattern, EdgeRun run, Point2 from, Point2 way) => Enumerable.Range(0, pattern.SewLine.Length).Where(i => i != run.From)
        .Select(i => Crossing(from, from + way, pattern.SewLine[i], pattern.SewLine[(i + 1) % pattern.SewLine.Length])).Append(way.Length).Min();

    /// <summary>How far along one line another crosses it, millimetres; infinite where it does not.</summary>
    private static double Crossing(Point2 from, Point2 to, Point2 one, Point2 other)
    {
        var (line, edge) = (to - from, other - one);
        var turn = Point2.Cross(line, edge);
        if (Math.Abs(turn) < 1e-9)
        {
            return double.PositiveInfinity;
        }

        var (at, on) = (Point2.Cross(one - from, edge) / turn, Point2.Cross(one - from, line) / turn);
        return at is > 0 and <= 1 && on is >= 0 and <= 1 ? at * line.Length : double.PositiveInfinity;
    }
}
