using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Grows an outline by half the spacing, so that grown outlines that touch stand the spacing apart.</summary>
/// <remarks>The grown outline always holds the true one with its rim of the given width: corners are never cut short.</remarks>
internal static class SpacedOutline
{
    /// <summary>How far a grown corner may stand beyond the exact arc, millimetres.</summary>
    private const double CornerExcess = 0.1;

    // Snapping moves a corner by at most 0.7 of a step; this keeps the rim whole.
    private const double SnapReserve = 0.8 / Grid.StepsPerMillimetre;

    /// <param name="rings">Outline, counter-clockwise, then holes, clockwise; millimetres.</param>
    /// <param name="rim">Half the spacing, millimetres; 0 gives the rings back.</param>
    /// <returns>Rings on the grid, same directions; holes that close are left out.</returns>
    public static IReadOnlyList<IReadOnlyList<Point2>> Grow(IReadOnlyList<IReadOnlyList<Point2>> rings, double rim)
    {
        if (rim <= 0)
        {
            return rings;
        }

        var grown = rings.Count == 1 && IsConvex(rings[0]) ? [GrowConvex(rings[0], rim + SnapReserve)] : Buffer(rings, rim + SnapReserve);
        return [.. grown.Select(Snapped).Where(ring => ring.Count >= 3)];
    }

    private static bool IsConvex(IReadOnlyList<Point2> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b, c) = (ring[i], ring[(i + 1) % ring.Count], ring[(i + 2) % ring.Count]);
            if (Point2.Cross(b - a, c - b) < 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Shifts each edge out and rounds each corner by edges that touch its arc from outside.</summary>
    private static List<Point2> GrowConvex(IReadOnlyList<Point2> ring, double rim)
    {
        var grown = new List<Point2>();
        var finest = 2 * Math.Acos(1 / (1 + Math.Clamp(CornerExcess / rim, 0.01, 0.4)));
        for (var i = 0; i < ring.Count; i++)
        {
            var (before, corner, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count]);
            var (arriving, leaving) = ((corner - before).Unit(), (after - corner).Unit());
            var turn = Math.Atan2(Point2.Cross(arriving, leaving), Point2.Dot(arriving, leaving));
            var parts = Math.Max(1, (int)Math.Ceiling(turn / finest));
            var start = Math.Atan2(-arriving.X, arriving.Y);
            var reach = rim / Math.Cos(turn / (2 * parts));
            for (var k = 0; k < parts; k++)
            {
                var angle = start + (turn * ((2 * k) + 1) / (2 * parts));
                grown.Add(corner + new Point2(reach * Math.Cos(angle), reach * Math.Sin(angle)));
            }
        }

        return grown;
    }

    private static IEnumerable<IReadOnlyList<Point2>> Buffer(IReadOnlyList<IReadOnlyList<Point2>> rings, double rim)
    {
        const int segments = 12;
        // Corners of the buffer lie on the arc and its chords inside: growing a little more puts the chords outside. The
        // library rounds the number of chords, so that a chord may span one and a half of its steps.
        var reach = rim / Math.Cos(1.5 * Math.PI / (4 * segments));
        var factory = new GeometryFactory();
        var polygon = factory.CreatePolygon(ToRing(factory, rings[0]), [.. rings.Skip(1).Select(ring => ToRing(factory, ring))]);
        var parameters = new BufferParameters(segments) { SimplifyFactor = 1e-6 };
        var grown = (Polygon)BufferOp.Buffer(polygon, reach, parameters);
        yield return FromRing(grown.ExteriorRing, counterClockwise: true);
        foreach (var hole in grown.InteriorRings)
        {
            yield return FromRing(hole, counterClockwise: false);
        }
    }

    private static LinearRing ToRing(GeometryFactory factory, IReadOnlyList<Point2> ring) =>
        factory.CreateLinearRing([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]);

    private static List<Point2> FromRing(LineString ring, bool counterClockwise)
    {
        var points = ring.Coordinates.Skip(1).Select(c => new Point2(c.X, c.Y)).ToList();
        if (Rings.SignedArea(points) > 0 != counterClockwise)
        {
            points.Reverse();
        }

        return points;
    }

    private static List<Point2> Snapped(IReadOnlyList<Point2> ring)
    {
        var snapped = new List<Point2>();
        foreach (var point in Grid.Snap(ring))
        {
            if (snapped.Count == 0 || snapped[^1] != point)
            {
                snapped.Add(point);
            }
        }

        while (snapped.Count > 1 && snapped[^1] == snapped[0])
        {
            snapped.RemoveAt(snapped.Count - 1);
        }

        return snapped;
    }
}
