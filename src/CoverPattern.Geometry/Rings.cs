using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Measures of rings: closed outlines as lists of corners, first point not repeated.</summary>
public static class Rings
{
    /// <summary>Area inside the ring, square millimetres; negative when the ring runs clockwise.</summary>
    /// <remarks>Measured from the first corner, so that an outline far from the origin loses no digits.</remarks>
    public static double SignedArea(IReadOnlyList<Point2> ring)
    {
        var doubled = 0.0;
        for (var i = 1; i + 1 < ring.Count; i++)
        {
            doubled += Point2.Cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
        }

        return doubled / 2;
    }

    /// <summary>Length round the ring, millimetres.</summary>
    public static double Perimeter(IReadOnlyList<Point2> ring)
    {
        var length = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            length += Point2.Distance(ring[i], ring[(i + 1) % ring.Count]);
        }

        return length;
    }

    /// <summary>The upright rectangle round the points.</summary>
    /// <exception cref="InvalidOperationException">There are no points.</exception>
    public static Box2 Bounds(IEnumerable<Point2> points)
    {
        var all = points.ToArray();
        return new Box2(
            new Point2(all.Min(p => p.X), all.Min(p => p.Y)),
            new Point2(all.Max(p => p.X), all.Max(p => p.Y)));
    }

    /// <summary>The ring on the grid, counted in its steps.</summary>
    public static ImmutableArray<GridPoint> ToSteps(IEnumerable<Point2> ring) => [.. ring.Select(Grid.ToSteps)];
}
