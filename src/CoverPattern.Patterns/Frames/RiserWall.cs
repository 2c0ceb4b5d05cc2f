using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>An upright wall under a dome: one quadrangle below each base strut, level at its foot.</summary>
internal static class RiserWall
{
    /// <summary>Adds the wall.</summary>
    /// <param name="points">Hub centres.</param>
    /// <param name="facets">Rings of hubs, counter-clockwise seen from outside, one border.</param>
    /// <param name="height">From the foot up to the lowest base hubs, millimetres; 0 for none.</param>
    internal static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Facets) Add(
        ImmutableArray<Point3> points, ImmutableArray<ImmutableArray<int>> facets, double height)
    {
        if (height == 0)
        {
            return (points, facets);
        }

        var ground = MeshLoops.Longest(MeshLoops.Find(facets), points);
        var foot = ground.Min(hub => points[hub].Z) - height;
        var below = ground.Select((hub, i) => (hub, i)).ToDictionary(pair => pair.hub, pair => points.Length + pair.i);
        IEnumerable<ImmutableArray<int>> walls = ground.Select((hub, i) =>
        {
            var next = ground[(i + 1) % ground.Length];
            return ImmutableArray.Create(below[hub], below[next], next, hub);
        });
        return ([.. points, .. ground.Select(hub => points[hub] with { Z = foot })], [.. facets, .. walls]);
    }
}
