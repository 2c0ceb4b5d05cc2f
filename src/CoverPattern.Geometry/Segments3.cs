using System;

namespace CoverPattern.Geometry;

/// <summary>Measures of straight segments in space.</summary>
public static class Segments3
{
    /// <summary>Least distance between two closed segments, millimetres.</summary>
    /// <remarks>
    /// The distance is a convex function of both places, so the least one is where both lines come nearest, or, when that lies beyond an
    /// end, at the end of one of them (own derivation).
    /// </remarks>
    public static double Distance(Point3 from, Point3 to, Point3 otherFrom, Point3 otherTo)
    {
        var ends = Math.Min(
            Math.Min(Distance(from, to, otherFrom), Distance(from, to, otherTo)),
            Math.Min(Distance(otherFrom, otherTo, from), Distance(otherFrom, otherTo, to)));
        var (step, other, between) = (to - from, otherTo - otherFrom, from - otherFrom);
        var (ss, so, oo) = (Point3.Dot(step, step), Point3.Dot(step, other), Point3.Dot(other, other));
        var determinant = (ss * oo) - (so * so);
        if (determinant <= 0)
        {
            return ends;
        }

        var (sb, ob) = (Point3.Dot(step, between), Point3.Dot(other, between));
        var (here, there) = (((so * ob) - (oo * sb)) / determinant, ((ss * ob) - (so * sb)) / determinant);
        var isInside = here is > 0 and < 1 && there is > 0 and < 1;
        return isInside ? Math.Min(ends, Point3.Distance(Point3.Between(from, to, here), Point3.Between(otherFrom, otherTo, there))) : ends;
    }

    /// <summary>Least distance between a closed segment and a point, millimetres.</summary>
    public static double Distance(Point3 from, Point3 to, Point3 point)
    {
        var step = to - from;
        var square = Point3.Dot(step, step);
        var share = square > 0 ? Math.Clamp(Point3.Dot(point - from, step) / square, 0, 1) : 0;
        return Point3.Distance(point, Point3.Between(from, to, share));
    }
}
