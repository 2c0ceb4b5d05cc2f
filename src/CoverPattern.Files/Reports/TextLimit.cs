using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>A straight line without ends that writing must not cross.</summary>
/// <param name="At">A point of it, millimetres on paper.</param>
/// <param name="Inward">Direction in which writing is allowed, length 1.</param>
internal readonly record struct TextLimit(Point2 At, Point2 Inward)
{
    // Millimetres on paper.
    private const double Clearance = 0.8;

    /// <summary>The edges of a convex ring that runs counter-clockwise.</summary>
    public static IEnumerable<TextLimit> Round(IReadOnlyList<Point2> ring) =>
        ring.Select((corner, i) => Left(corner, ring[(i + 1) % ring.Count]));

    /// <summary>Everything left of a line.</summary>
    public static TextLimit Left(Point2 from, Point2 to) => new(from, (to - from).Unit().QuarterTurned());

    /// <summary>Everything between two places along the page.</summary>
    public static TextLimit[] Between(double low, double high) =>
        [new(new Point2(low, 0), new Point2(1, 0)), new(new Point2(high, 0), new Point2(-1, 0))];

    /// <summary>The larger of two texts, one on each side of a line; null when neither side has room.</summary>
    /// <param name="ring">As <see cref="TextRoom"/> takes it.</param>
    /// <param name="text">As <see cref="TextRoom"/> takes it.</param>
    /// <param name="least">As <see cref="TextRoom"/> takes it.</param>
    /// <param name="limits">As <see cref="TextRoom"/> takes it, the line to be kept off first.</param>
    public static FigureText? Beside(IReadOnlyList<Point2> ring, FigureText text, double least, TextLimit[] limits)
    {
        return new[] { 1, -1 }.Select(side => TextRoom.Fit([.. ring], text, least, [limits[0].Side(side), .. limits[1..]]))
            .OfType<FigureText>().OrderByDescending(fitted => fitted.Height).FirstOrDefault();
    }

    // Free of the line by the half width of an arrow's head and a little more.
    private TextLimit Side(int side) => new(At + (Clearance * side * Inward), side * Inward);
}
