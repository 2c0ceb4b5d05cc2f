using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Tries places for a text one after the other, and keeps what was taken.</summary>
internal static class FreeText
{
    // Free space round the letters, millimetres on paper: more than half the widest line.
    private const double Clear = 0.35;

    // Places tried across the outline each way.
    private const int Steps = 14;

    private static readonly double[] AlongStep = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82];
    private static readonly int[] Sides = [1, -1];

    /// <summary>The first text that keeps off everything taken; it takes its place.</summary>
    public static FigureText? First(IEnumerable<FigureText> tries, TakenPlaces taken)
    {
        var free = tries.FirstOrDefault(text => IsFree(text, taken));
        if (free is not null)
        {
            taken.Take(Grown(free));
        }

        return free;
    }

    /// <summary>Whether a text keeps off everything taken.</summary>
    public static bool IsFree(FigureText text, TakenPlaces taken) => taken.IsFree(Grown(text));

    /// <summary>Places inside an outline, the nearest to its middle first; each level, then along each of its long edges.</summary>
    /// <param name="ring">Counter-clockwise; its edges are taken, so that a text which begins inside stays inside.</param>
    /// <param name="text">What is written, with its height.</param>
    public static IEnumerable<FigureText> Inside(ImmutableArray<Point2> ring, FigureText text)
    {
        var (box, middle) = (Rings.Bounds(ring), (1.0 / ring.Length) * ring.Aggregate((left, right) => left + right));
        var spots = Enumerable.Range(1, Steps - 1)
            .SelectMany(i => Enumerable.Range(1, Steps - 1).Select(j => box.Low + new Point2(box.Width * i / Steps, box.Height * j / Steps)))
            .Append(middle)
            .Where(spot => Holds(ring, spot))
            .OrderBy(spot => Point2.Distance(spot, middle))
            .ToArray();
        return TextRoom.Turns(ring).SelectMany(turn => spots.Select(spot => text with { At = spot, TurnDegrees = turn }));
    }

    /// <summary>Places along a step, beside it on either side, its middle first.</summary>
    /// <param name="from">Where the step begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="text">What is written, with its height.</param>
    /// <param name="line">How much of the step's line lies on either side beyond that of a seam, millimetres on paper.</param>
    public static IEnumerable<FigureText> Along(Point2 from, Point2 to, FigureText text, double line = 0)
    {
        var aside = ((text.Height / 2) + Clear + 0.05 + line) * (to - from).Unit().QuarterTurned();
        var turn = TextRoom.Readable(to - from);
        return AlongStep.SelectMany(part => Sides.Select(side => text with { At = Point2.Between(from, to, part) + (side * aside), TurnDegrees = turn }));
    }

    private static Point2[] Grown(FigureText text)
    {
        var box = text.Box();
        var (along, up) = (Clear * (box[1] - box[0]).Unit(), Clear * (box[3] - box[0]).Unit());
        return [box[0] - along - up, box[1] + along - up, box[2] + along + up, box[3] - along + up];
    }

    /// <summary>Whether a ray from the point crosses the outline an odd number of times.</summary>
    private static bool Holds(ImmutableArray<Point2> ring, Point2 point) => ring
        .Select((from, i) => (From: from, To: ring[(i + 1) % ring.Length]))
        .Count(edge => (edge.From.Y > point.Y) != (edge.To.Y > point.Y)
            && point.X < edge.From.X + ((point.Y - edge.From.Y) / (edge.To.Y - edge.From.Y) * (edge.To.X - edge.From.X))) % 2 == 1;
}
