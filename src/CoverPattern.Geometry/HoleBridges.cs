using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Joins holes to their outline by double edges, so that one ring goes round what is left.</summary>
/// <remarks>Known from cutting polygons with holes into triangles [from memory]; here each bridge is the shortest that meets nothing.</remarks>
internal static class HoleBridges
{
    /// <summary>One ring round an outline and its holes; corners at which a bridge ends stand in it twice.</summary>
    /// <param name="outline">Counter-clockwise.</param>
    /// <param name="holes">Clockwise, inside, apart from each other.</param>
    /// <returns>The ring; null when a hole has no bridge that meets nothing.</returns>
    public static List<GridPoint>? Join(IReadOnlyList<GridPoint> outline, IEnumerable<IReadOnlyList<GridPoint>> holes)
    {
        var ring = outline.ToList();
        var open = holes.OrderByDescending(hole => hole.Max(point => point.X)).ToList();
        while (open.Count > 0)
        {
            var hole = open[0];
            if (Shortest(ring, open) is not { } bridge)
            {
                return null;
            }

            var round = Enumerable.Range(0, hole.Count + 1).Select(k => hole[(bridge.OnHole + k) % hole.Count]);
            ring.InsertRange(bridge.OnRing + 1, [.. round, ring[bridge.OnRing]]);
            open.RemoveAt(0);
        }

        return ring;
    }

    /// <summary>The shortest bridge from the ring to the first of the open holes.</summary>
    private static (int OnRing, int OnHole)? Shortest(List<GridPoint> ring, List<IReadOnlyList<GridPoint>> open)
    {
        var edges = open.Append(ring).SelectMany(Edges).ToArray();
        var pairs = from i in Enumerable.Range(0, ring.Count)
                    from k in Enumerable.Range(0, open[0].Count)
                    orderby Square(ring[i], open[0][k]), i, k
                    where IsInside(ring, i, open[0][k]) && Array.TrueForAll(edges, edge => IsClear(ring[i], open[0][k], edge))
                    select ((int OnRing, int OnHole)?)(i, k);
        return pairs.FirstOrDefault();
    }

    private static IEnumerable<(GridPoint From, GridPoint To)> Edges(IReadOnlyList<GridPoint> ring) =>
        ring.Select((point, i) => (point, ring[(i + 1) % ring.Count]));

    private static bool IsClear(GridPoint from, GridPoint to, (GridPoint From, GridPoint To) edge)
    {
        if (edge.From == from || edge.From == to)
        {
            return edge.To == from || edge.To == to || (!ExactPredicates.IsOnSegment(from, to, edge.To) && !IsBeyond(from, to, edge));
        }

        return edge.To == from || edge.To == to
            ? !ExactPredicates.IsOnSegment(from, to, edge.From) && !IsBeyond(from, to, edge)
            : !ExactPredicates.SegmentsMeet(from, to, edge.From, edge.To);
    }

    /// <summary>Whether the edge goes on over the whole bridge.</summary>
    private static bool IsBeyond(GridPoint from, GridPoint to, (GridPoint From, GridPoint To) edge) =>
        ExactPredicates.IsOnSegment(edge.From, edge.To, from) && ExactPredicates.IsOnSegment(edge.From, edge.To, to);

    /// <summary>Whether a point lies, seen from a corner of the ring, between the corner's edges: ring corners may stand twice.</summary>
    private static bool IsInside(List<GridPoint> ring, int corner, GridPoint point)
    {
        var (before, at, after) = (ring[(corner + ring.Count - 1) % ring.Count], ring[corner], ring[(corner + 1) % ring.Count]);
        var (leftOfIn, leftOfOut) = (ExactPredicates.Side(before, at, point) > 0, ExactPredicates.Side(at, after, point) > 0);
        return ExactPredicates.Side(before, at, after) > 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
    }

    private static double Square(GridPoint left, GridPoint right)
    {
        double x = left.X - right.X, y = left.Y - right.Y;
        return (x * x) + (y * y);
    }
}
