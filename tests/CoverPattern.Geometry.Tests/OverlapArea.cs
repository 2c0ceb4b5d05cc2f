using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry.Tests;

/// <summary>Area common to two regions by another road than the exact test: signed triangles from the origin, clipped pair by pair.</summary>
internal static class OverlapArea
{
    public static double Of(GridRegion left, GridRegion right) => Triangles(left).Sum(one => Triangles(right).Sum(other => Common(one, other)));

    private static IEnumerable<(Point2 A, Point2 B)> Triangles(GridRegion region) =>
        region.Rings.SelectMany(ring => ring.Select((point, i) => (ToPoint(point), ToPoint(ring[(i + 1) % ring.Length]))));

    private static Point2 ToPoint(GridPoint point) => new(point.X, point.Y);

    private static double Common((Point2 A, Point2 B) one, (Point2 A, Point2 B) other)
    {
        var (area, otherArea) = (Point2.Cross(one.A, one.B), Point2.Cross(other.A, other.B));
        if (area == 0 || otherArea == 0)
        {
            return 0;
        }

        var clipped = area > 0 ? new List<Point2> { default, one.A, one.B } : [default, one.B, one.A];
        Point2[] clip = otherArea > 0 ? [default, other.A, other.B] : [default, other.B, other.A];
        for (var i = 0; i < 3; i++)
        {
            clipped = LeftOf(clipped, clip[i], clip[(i + 1) % 3]);
        }

        return Math.Sign(area) * Math.Sign(otherArea) * (clipped.Count < 3 ? 0 : Rings.SignedArea(clipped.ToImmutableArray()));
    }

    private static List<Point2> LeftOf(List<Point2> ring, Point2 from, Point2 to)
    {
        var kept = new List<Point2>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var (sideA, sideB) = (Point2.Cross(to - from, a - from), Point2.Cross(to - from, b - from));
            if (sideA >= 0)
            {
                kept.Add(a);
            }

            if (sideA * sideB < 0)
            {
                kept.Add(Point2.Between(a, b, sideA / (sideA - sideB)));
            }
        }

        return kept;
    }
}
