using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays;

/// <summary>Round outlines with fewer corners, for the search alone: it weighs edges against edges, and hundreds of them take hours.</summary>
internal static class CoarseOutline
{
    // Forty-eight tangents stand off a circle of 325 mm by 0.7 mm at most.
    private const int MostCorners = 48;

    // A hole needs fewer: what lies in it is small, and goes in with room to spare.
    private const int MostInHole = 32;

    // A ring with an edge longer than this many mean edges is no circle: evenly chosen edges could miss it.
    private const double LongestStep = 4;

    // Outward by this much, more than what rounding to the grid takes away in two turns, millimetres.
    private const double Margin = 0.004;

    /// <summary>A ring on the grid that holds the given one: made of some of its edges where it is round with many corners, smoothed where a curve is a part of it, else the same.</summary>
    /// <param name="ring">On the grid, counter-clockwise.</param>
    public static ImmutableArray<Point2> Around(ImmutableArray<Point2> ring)
    {
        if (ring.Length <= MostCorners)
        {
            return ring;
        }

        if (!IsConvex(ring) || Longest(ring) > LongestStep * Rings.Perimeter(ring) / ring.Length)
        {
            return SmoothOutline.Around(ring, MostCorners);
        }

        var edges = Enumerable.Range(0, MostCorners).Select(i => Line(ring, (int)((long)ring.Length * i / MostCorners))).ToArray();
        return Grid.Snap(edges.Select((edge, i) => Meet(edge, edges[(i + 1) % edges.Length])));
    }

    /// <summary>A hole on the grid inside the given one, with few corners where it is round.</summary>
    /// <param name="hole">On the grid, clockwise.</param>
    public static ImmutableArray<Point2> Within(ImmutableArray<Point2> hole) => hole.Length <= MostInHole ? hole : SmoothOutline.Within(hole, MostInHole);

    private static (Point2 On, Point2 Along) Line(ImmutableArray<Point2> ring, int edge)
    {
        var along = (ring[(edge + 1) % ring.Length] - ring[edge]).Unit();
        return (ring[edge] - (Margin * along.QuarterTurned()), along);
    }

    private static Point2 Meet((Point2 On, Point2 Along) left, (Point2 On, Point2 Along) right) => Lines.Meet(left.On, left.Along, right.On, right.Along);

    private static double Longest(ImmutableArray<Point2> ring) => Enumerable.Range(0, ring.Length).Max(i => Point2.Distance(ring[i], ring[(i + 1) % ring.Length]));

    /// <summary>Whether every corner turns left, and so that the chosen edges still turn by less than a half turn each.</summary>
    private static bool IsConvex(ImmutableArray<Point2> ring) => Enumerable.Range(0, ring.Length).All(i =>
        Point2.Cross(ring[(i + 1) % ring.Length] - ring[i], ring[(i + 2) % ring.Length] - ring[(i + 1) % ring.Length]) > 0);
}
