using System;
using System.Collections.Immutable;

namespace CoverPattern.Geometry;

/// <summary>The risky yes-or-no questions of the plane, answered without rounding for points of the <see cref="Grid"/>.</summary>
public static class ExactPredicates
{
    /// <summary>Tells on which side of the line a-b the point c lies.</summary>
    /// <returns>+1 left (the turn a, b, c is counter-clockwise), 0 on the line, -1 right.</returns>
    public static int Side(GridPoint a, GridPoint b, GridPoint c) =>
        Math.Sign(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));

    /// <summary>Tells whether a point lies on a closed segment.</summary>
    public static bool IsOnSegment(GridPoint a, GridPoint b, GridPoint point) =>
        Side(a, b, point) == 0
        && Math.Min(a.X, b.X) <= point.X && point.X <= Math.Max(a.X, b.X)
        && Math.Min(a.Y, b.Y) <= point.Y && point.Y <= Math.Max(a.Y, b.Y);

    /// <summary>Tells whether two closed segments share a point.</summary>
    public static bool SegmentsMeet(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        if (SegmentsCross(a, b, c, d))
        {
            return true;
        }

        return IsOnSegment(a, b, c) || IsOnSegment(a, b, d) || IsOnSegment(c, d, a) || IsOnSegment(c, d, b);
    }

    /// <summary>Tells whether two segments cross in a point that is inside both.</summary>
    public static bool SegmentsCross(GridPoint a, GridPoint b, GridPoint c, GridPoint d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    /// <summary>Tells where a point lies against a ring.</summary>
    /// <param name="ring">Ring of either direction, first point not repeated.</param>
    /// <param name="point">The point asked for.</param>
    /// <returns>+1 inside, 0 on the ring, -1 outside.</returns>
    /// <remarks>Even-odd rule by a ray to +x; the ray's crossings are counted half-open so that a corner counts once.</remarks>
    public static int Locate(ImmutableArray<GridPoint> ring, GridPoint point)
    {
        var inside = false;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            if (IsOnSegment(a, b, point))
            {
                return 0;
            }

            if (a.Y > point.Y != b.Y > point.Y && Side(a, b, point) * Math.Sign(b.Y - a.Y) > 0)
            {
                inside = !inside;
            }
        }

        return inside ? 1 : -1;
    }

    /// <summary>Tells whether a ring has no edge of no length and no two edges that meet but neighbours in their common corner.</summary>
    /// <param name="ring">Ring of at least three points, first point not repeated.</param>
    public static bool IsSimple(ImmutableArray<GridPoint> ring) => ring.Length >= 3 && FirstClash(ring) is null;

    /// <summary>Finds two edges of a ring that meet elsewhere than neighbours in their common corner.</summary>
    /// <param name="ring">Ring of at least three points, first point not repeated.</param>
    /// <returns>Indices of the corners at which the two begin; null where there are none.</returns>
    public static (int Edge, int Other)? FirstClash(ImmutableArray<GridPoint> ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            for (var j = i + 1; j < ring.Length; j++)
            {
                if (EdgesClash(ring, i, j))
                {
                    return (i, j);
                }
            }
        }

        return null;
    }

    private static bool EdgesClash(ImmutableArray<GridPoint> ring, int i, int j)
    {
        var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
        var (c, d) = (ring[j], ring[(j + 1) % ring.Length]);
        if (j == i + 1)
        {
            return a == b || c == d || IsOnSegment(a, b, d) || IsOnSegment(c, d, a);
        }

        if (i == 0 && j == ring.Length - 1)
        {
            return a == b || c == d || IsOnSegment(a, b, c) || IsOnSegment(c, d, b);
        }

        return SegmentsMeet(a, b, c, d);
    }
}
