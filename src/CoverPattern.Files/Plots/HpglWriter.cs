using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Files.Plots;

/// <summary>Writes strokes in HP-GL/2: moves in steps of 0.025 mm, a pen a purpose.</summary>
/// <remarks>
/// Uses IN, SP, PA, PR, PU and PD only, which every reader of HP-GL knows [HP PCL 5 TR II, 20-2, 20-30, 20-32]; a step is
/// 0.025 mm there (Table 17-7), so a coordinate is off by 0.0125 mm at most. Relative moves lead from one rounded place to
/// the next, so that nothing adds up; the first leads from the origin, where the pen is sent before.
/// </remarks>
public static class HpglWriter
{
    /// <summary>Millimetres of one step.</summary>
    public const double Step = 0.025;

    private const int SixteenBitLimit = 32_767;

    // Coordinates after one PD; shorter lines suit small memories, longer ones nobody.
    private const int PointsPerCommand = 60;

    /// <summary>Writes one plot.</summary>
    /// <param name="name">Name for messages.</param>
    /// <param name="strokes">Strokes in the order in which they are drawn; x along the roll from 0, y across from 0.</param>
    /// <param name="size">Length and width of what is plotted, millimetres.</param>
    /// <param name="machine">What the plotter was told.</param>
    /// <exception cref="PlotTooLargeException">A sixteen-bit machine cannot count so far.</exception>
    public static byte[] Write(string name, IEnumerable<Stroke> strokes, Point2 size, PlotMachine machine)
    {
        ArgumentNullException.ThrowIfNull(strokes);
        ArgumentNullException.ThrowIfNull(machine);

        var isRelative = machine.Moves == PenMoves.Relative;
        var text = new StringBuilder(isRelative ? "IN;PA0,0;PR;\n" : "IN;PA;\n");
        var (pen, at) = (0, (X: 0, Y: 0));
        foreach (var stroke in strokes)
        {
            var wanted = PenOf(stroke.Use, machine);
            if (wanted != pen)
            {
                pen = wanted;
                text.Append(CultureInfo.InvariantCulture, $"PU;SP{pen};\n");
            }

            var points = Steps(name, stroke, size, machine);
            Append(text, "PU", isRelative ? Moves(at, points[..1]) : points[..1]);
            Append(text, "PD", isRelative ? Moves(points[0], points[1..]) : points[1..]);
            at = points[^1];
        }

        text.Append("PU;SP0;\n");
        return Encoding.ASCII.GetBytes(text.ToString());
    }

    private static int PenOf(StrokeUse use, PlotMachine machine) => use switch
    {
        StrokeUse.Draw => machine.DrawPen,
        StrokeUse.Notch => machine.NotchPen,
        _ => machine.KnifePen,
    };

    private static void Append(StringBuilder text, string command, ImmutableArray<(int X, int Y)> points)
    {
        foreach (var part in points.Chunk(PointsPerCommand))
        {
            text.Append(command).AppendJoin(',', part.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.X},{point.Y}"))).Append(";\n");
        }
    }

    /// <summary>From place to place, a step beyond what sixteen bits hold in as few equal ones as will do.</summary>
    private static ImmutableArray<(int X, int Y)> Moves((int X, int Y) from, ImmutableArray<(int X, int Y)> points) =>
        [.. points.Prepend(from).Zip(points).SelectMany(move => Parts(move.Second.X - move.First.X, move.Second.Y - move.First.Y))];

    private static IEnumerable<(int X, int Y)> Parts(int x, int y)
    {
        var count = Math.Max(1, (Math.Max(Math.Abs(x), Math.Abs(y)) + SixteenBitLimit - 1) / SixteenBitLimit);
        for (var i = 1; i <= count; i++)
        {
            yield return (Share(x, i) - Share(x, i - 1), Share(y, i) - Share(y, i - 1));
        }

        int Share(int whole, int part) => (int)((long)whole * part / count);
    }

    private static ImmutableArray<(int X, int Y)> Steps(string name, Stroke stroke, Point2 size, PlotMachine machine)
    {
        var shift = machine.Origin == PlotOrigin.Centre ? Point2.Between(default, size, 0.5) : default;
        var limit = machine is { IsSixteenBit: true, Moves: PenMoves.Absolute } ? SixteenBitLimit : int.MaxValue;
        return [.. stroke.Points.Select(point => Place(point) - shift).Select(ToSteps)];

        Point2 Place(Point2 point) => machine.Marks == MarkedSide.Table ? new Point2(point.X, size.Y - point.Y) : point;

        (int X, int Y) ToSteps(Point2 point)
        {
            var (x, y) = (Math.Round(point.X / Step), Math.Round(point.Y / Step));
            var reach = Math.Max(Math.Abs(x), Math.Abs(y));
            return reach <= limit ? ((int)x, (int)y) : throw new PlotTooLargeException(
                name, reach * Step, limit * Step, PlotTooLargeException.WayOut(size, machine.Origin == PlotOrigin.Centre, limit * Step));
        }
    }
}
