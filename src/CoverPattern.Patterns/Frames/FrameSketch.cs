using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>A whole ball of hubs and triangles, of which the upper rows become a frame with labels.</summary>
internal sealed class FrameSketch
{
    private readonly ImmutableArray<(int RingFromTop, Point3 Position)> points;
    private readonly ImmutableArray<ImmutableArray<int>> triangles;
    private readonly int rows;

    /// <param name="points">Hubs with their ring from the top, deck at z = 0.</param>
    /// <param name="triangles">Indexes into the points, counter-clockwise seen from outside.</param>
    /// <param name="rows">Rows to keep, from the top.</param>
    internal FrameSketch(
        ImmutableArray<(int RingFromTop, Point3 Position)> points, ImmutableArray<ImmutableArray<int>> triangles, int rows)
    {
        this.points = points;
        this.triangles = triangles;
        this.rows = rows;
    }

    internal Frame Finish()
    {
        var order = Enumerable.Range(0, points.Length)
            .Where(i => points[i].RingFromTop <= rows)
            .OrderBy(i => rows - points[i].RingFromTop)
            .ThenBy(i => Bearing(points[i].Position))
            .ToArray();
        var hubs = Hubs(order);
        var facets = Facets(order, hubs);
        var (struts, classes) = StrutSorter.Sort(hubs, facets);
        return new Frame(hubs, struts, facets, classes, [.. Enumerable.Range(0, hubs.Count(hub => hub.Ring == 0))]);
    }

    private ImmutableArray<Hub> Hubs(int[] order)
    {
        var rings = order.Select(i => rows - points[i].RingFromTop).ToArray();
        var labels = RowLabels.Make("H", rings);
        return [.. order.Select((i, at) => new Hub(labels[at], rings[at], points[i].Position))];
    }

    private ImmutableArray<Facet> Facets(int[] order, ImmutableArray<Hub> hubs)
    {
        var newIndex = order.Select((old, at) => (old, at)).ToDictionary(pair => pair.old, pair => pair.at);
        var kept = triangles
            .Where(triangle => triangle.All(newIndex.ContainsKey))
            .Select(triangle => RingEdgeFirst([.. triangle.Select(corner => newIndex[corner])], hubs))
            .OrderBy(triangle => Row(triangle, hubs))
            .ThenBy(triangle => Bearing(Centre(triangle, hubs)))
            .ToArray();
        var labels = RowLabels.Make("F", [.. kept.Select(triangle => Row(triangle, hubs))]);
        return [.. kept.Select((triangle, at) => new Facet(labels[at], Row(triangle, hubs), triangle))];
    }

    /// <summary>Begins with the edge whose two hubs are in one ring; the warp will run along it.</summary>
    private static ImmutableArray<int> RingEdgeFirst(ImmutableArray<int> triangle, ImmutableArray<Hub> hubs)
    {
        var start = Enumerable.Range(0, triangle.Length)
            .MinBy(i => Math.Abs(hubs[triangle[i]].Ring - hubs[triangle[(i + 1) % triangle.Length]].Ring));
        return [.. triangle[start..], .. triangle[..start]];
    }

    private static int Row(ImmutableArray<int> triangle, ImmutableArray<Hub> hubs) => 1 + triangle.Min(hub => hubs[hub].Ring);

    private static Point3 Centre(ImmutableArray<int> triangle, ImmutableArray<Hub> hubs) =>
        (1.0 / triangle.Length) * triangle.Aggregate(default(Point3), (sum, hub) => sum + hubs[hub].Position);

    /// <summary>Angle from the front, 0 to 2 pi counter-clockwise; a hair before the front counts as the front.</summary>
    private static double Bearing(Point3 position)
    {
        const double hair = 1e-9;
        var angle = Math.Atan2(position.Y, position.X);
        return angle < -hair ? angle + (2 * Math.PI) : Math.Max(angle, 0);
    }
}
