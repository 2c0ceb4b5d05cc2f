using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>What two regions have to do with each other.</summary>
public static class RegionPairs
{
    /// <summary>Tells without rounding whether the insides of two regions share a point; touching edges and corners do not count.</summary>
    /// <remarks>
    /// Where no two edges cross inside both, an edge meets the other boundary only in corners of either, so between
    /// two such corners it lies wholly inside, wholly outside or wholly on the other boundary, and its middle tells
    /// which. On the other boundary both insides lie on the same side exactly when the edges run the same way.
    /// If no stretch of either boundary does so and yet the insides met, each inside would hold the other: they
    /// would be equal and their boundaries run the same way. Middles are exact in doubled coordinates. Own derivation.
    /// </remarks>
    public static bool InteriorsMeet(GridRegion left, GridRegion right)
    {
        if (left.Low.X >= right.High.X || right.Low.X >= left.High.X || left.Low.Y >= right.High.Y || right.Low.Y >= left.High.Y)
        {
            return false;
        }

        var near = EdgesNear(left, right);
        var nearRight = EdgesNear(right, left);
        return near.Any(edge => nearRight.Any(other => Cross(edge, other)))
            || near.Any(edge => EntersInside(edge, right, nearRight))
            || nearRight.Any(edge => EntersInside(edge, left, near));
    }

    /// <summary>Least distance between the boundaries of two regions, millimetres.</summary>
    /// <param name="left">One region.</param>
    /// <param name="right">The other.</param>
    /// <param name="enough">Distances of this size and more, millimetres, need not be told apart.</param>
    /// <returns>The distance, or some number not below <paramref name="enough"/> when it is not smaller.</returns>
    public static double BoundaryDistance(GridRegion left, GridRegion right, double enough)
    {
        var reach = (long)Math.Ceiling(enough * Grid.StepsPerMillimetre);
        var others = right.Edges().Where(edge => IsNear(edge, left, reach)).ToArray();
        var least = enough;
        foreach (var edge in left.Edges().Where(edge => IsNear(edge, right, reach)))
        {
            foreach (var other in others)
            {
                least = Math.Min(least, SegmentDistance(edge, other, reach, enough));
            }
        }

        return least;
    }

    private static double SegmentDistance(
        (GridPoint From, GridPoint To) edge, (GridPoint From, GridPoint To) other, long reach, double enough) =>
        BoxesMeet(edge, other, reach)
            ? Segments.Distance(edge.From.ToPoint(), edge.To.ToPoint(), other.From.ToPoint(), other.To.ToPoint())
            : enough;

    private static (GridPoint From, GridPoint To)[] EdgesNear(GridRegion region, GridRegion other) =>
        [.. region.Edges().Where(edge => IsNear(edge, other, 0))];

    private static bool IsNear((GridPoint From, GridPoint To) edge, GridRegion region, long reach) =>
        BoxesMeet(edge, (region.Low, region.High), reach);

    private static bool BoxesMeet((GridPoint From, GridPoint To) edge, (GridPoint From, GridPoint To) other, long reach) =>
        Math.Min(edge.From.X, edge.To.X) <= Math.Max(other.From.X, other.To.X) + reach
        && Math.Max(edge.From.X, edge.To.X) >= Math.Min(other.From.X, other.To.X) - reach
        && Math.Min(edge.From.Y, edge.To.Y) <= Math.Max(other.From.Y, other.To.Y) + reach
        && Math.Max(edge.From.Y, edge.To.Y) >= Math.Min(other.From.Y, other.To.Y) - reach;

    private static bool Cross((GridPoint From, GridPoint To) edge, (GridPoint From, GridPoint To) other) =>
        BoxesMeet(edge, other, 0) && ExactPredicates.SegmentsCross(edge.From, edge.To, other.From, other.To);

    private static bool EntersInside(
        (GridPoint From, GridPoint To) edge, GridRegion region, (GridPoint From, GridPoint To)[] nearEdges)
    {
        var from = edge.From;
        foreach (var to in StopsAlong(edge, nearEdges))
        {
            if (LiesInside((from, to), region))
            {
                return true;
            }

            from = to;
        }

        return false;
    }

    /// <summary>Corners of the other boundary on an edge, in order from its start, and its end.</summary>
    private static IEnumerable<GridPoint> StopsAlong(
        (GridPoint From, GridPoint To) edge, (GridPoint From, GridPoint To)[] nearEdges) =>
        nearEdges.SelectMany(other => new[] { other.From, other.To })
            .Where(corner => ExactPredicates.IsOnSegment(edge.From, edge.To, corner) && corner != edge.From && corner != edge.To)
            .Append(edge.To)
            .Distinct()
            .OrderBy(corner => Math.Abs(corner.X - edge.From.X) + Math.Abs(corner.Y - edge.From.Y));

    private static bool LiesInside((GridPoint From, GridPoint To) stretch, GridRegion region)
    {
        var middle = new GridPoint(stretch.From.X + stretch.To.X, stretch.From.Y + stretch.To.Y);
        var inside = false;
        foreach (var (from, to) in region.Edges())
        {
            var (a, b) = (new GridPoint(2 * from.X, 2 * from.Y), new GridPoint(2 * to.X, 2 * to.Y));
            if (ExactPredicates.IsOnSegment(a, b, middle))
            {
                return RunSameWay(stretch, (from, to));
            }

            if (a.Y > middle.Y != b.Y > middle.Y && ExactPredicates.Side(a, b, middle) * Math.Sign(b.Y - a.Y) > 0)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static bool RunSameWay((GridPoint From, GridPoint To) stretch, (GridPoint From, GridPoint To) edge) =>
        ((stretch.To.X - stretch.From.X) * (edge.To.X - edge.From.X)) + ((stretch.To.Y - stretch.From.Y) * (edge.To.Y - edge.From.Y)) > 0;
}
