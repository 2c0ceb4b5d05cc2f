using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>What papers say of pieces and holes that are round.</summary>
internal static class RoundShapes
{
    // Corners of the polygon that stands for the circle in which a name is written.
    private const int NameCorners = 16;

    // Circles are drawn this near to their radius, millimetres, with half a step of the grid.
    private const double OffCircle = 0.03;
    private const int FewestCorners = 24;

    // Sine of a degree.
    private const double OneDegree = 0.0175;

    /// <summary>
    /// Where the name of a pattern is written: its main face; in a pierced piece the first face without a hole, so that it keeps off
    /// folds; where all have one, and in an added piece, the free circle of the label.
    /// </summary>
    public static ImmutableArray<Point2> NameRoom(Pattern pattern)
    {
        var whole = pattern.Facets.FirstOrDefault(face => !pattern.Cutouts.Any(cutout => Touch(face, cutout.Rim)));
        return whole.IsDefault
            ? [
                .. Enumerable.Range(0, NameCorners).Select(i => pattern.LabelSpot + (pattern.LabelRadius
                    * new Point2(Math.Cos(2 * Math.PI * i / NameCorners), Math.Sin(2 * Math.PI * i / NameCorners)))),
            ]
            : whole;
    }

    /// <summary>Whether a rim and a face have a point in common: rims have a corner wherever they cross a fold.</summary>
    private static bool Touch(ImmutableArray<Point2> face, ImmutableArray<Point2> rim)
    {
        var (outline, hole) = (Rings.ToSteps(face), Rings.ToSteps(rim));
        return hole.Any(corner => ExactPredicates.Locate(outline, corner) >= 0) || outline.Any(corner => ExactPredicates.Locate(hole, corner) >= 0);
    }

    /// <summary>The ring that a run lies on.</summary>
    public static ImmutableArray<Point2> RingOf(Pattern pattern, int run) =>
        run < pattern.Runs.Length ? pattern.SewLine : pattern.Cutouts[run - pattern.Runs.Length].Rim;

    /// <summary>Diameter of the circle of a ring's area, in print.</summary>
    public static string Diameter(ImmutableArray<Point2> ring, Ruler ruler) => ruler.Of(2 * Math.Sqrt(Math.Abs(Rings.SignedArea(ring)) / Math.PI));

    /// <summary>What a closed line is, in print: a circle by its diameter, a rectangle by its sides, anything else by the box that it fills as drawn.</summary>
    public static string Size(ImmutableArray<Point2> ring, Ruler ruler) => IsCircle(ring) ? $"circle of diameter {Diameter(ring, ruler)}"
        : Rectangle(ring) is { } sides ? $"rectangle {ruler.Of(sides.X)} x {ruler.Of(sides.Y)}, diagonals {ruler.Of(sides.Length)}, turned as drawn"
        : $"{(Corners(ring).Length < FewestCorners ? "outline" : "curve")} as drawn, {Box(ring, ruler)}";

    /// <summary>The same in few words.</summary>
    public static string ShortSize(ImmutableArray<Point2> ring, Ruler ruler) => IsCircle(ring) ? Diameter(ring, ruler) : Box(ring, ruler);

    /// <summary>Whether it has many corners, all equally far from the middle.</summary>
    public static bool IsCircle(ImmutableArray<Point2> ring)
    {
        var middle = Rings.Bounds(ring).Centre;
        var distances = ring.Select(corner => Point2.Distance(corner, middle)).ToArray();
        return ring.Length >= FewestCorners && distances.Max() - distances.Min() <= OffCircle;
    }

    /// <summary>Sides of a rectangle, the more level one first; null for any other ring. What bends by less than a degree is where a straight side crosses a fold.</summary>
    private static Point2? Rectangle(ImmutableArray<Point2> ring)
    {
        var corners = Corners(ring);
        Point2[] sides = [.. corners.Select((corner, i) => corners[(i + 1) % corners.Length] - corner)];
        return sides.Length != 4 || sides.Where((side, i) => Math.Abs(Point2.Dot(side.Unit(), sides[(i + 1) % 4].Unit())) > OneDegree).Any() ? null
            : Math.Abs(sides[0].X) >= Math.Abs(sides[0].Y) ? new Point2(sides[0].Length, sides[1].Length)
            : new Point2(sides[1].Length, sides[0].Length);
    }

    private static Point2[] Corners(ImmutableArray<Point2> ring) =>
        [.. ring.Where((corner, i) => Math.Abs(Point2.Cross((corner - ring[(i + ring.Length - 1) % ring.Length]).Unit(), (ring[(i + 1) % ring.Length] - corner).Unit())) > OneDegree)];

    private static string Box(ImmutableArray<Point2> ring, Ruler ruler) => $"{ruler.Of(Rings.Bounds(ring).Width)} x {ruler.Of(Rings.Bounds(ring).Height)}";
}
