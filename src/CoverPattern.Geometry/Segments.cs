using System;

namespace CoverPattern.Geometry;

/// <summary>Measures of straight segments.</summary>
public static class Segments
{
    /// <summary>Least distance between two closed segments, millimetres; 0 when they meet.</summary>
    public static double Distance(Point2 from, Point2 to, Point2 otherFrom, Point2 otherTo)
    {
        if (Cross(from, to, otherFrom, otherTo))
        {
            return 0;
        }

        return Math.Min(
            Math.Min(Distance(from, to, otherFrom), Distance(from, to, otherTo)),
            Math.Min(Distance(otherFrom, otherTo, from), Distance(otherFrom, otherTo, to)));
    }

    /// <summary>Least distance between a closed segment and a point, millimetres.</summary>
    public static double Distance(Point2 from, Point2 to, Point2 point) => Point2.Distance(point, Nearest(from, to, point));

    /// <summary>The point of a closed segment that is nearest to a point.</summary>
    public static Point2 Nearest(Point2 from, Point2 to, Point2 point)
    {
        var step = to - from;
        var square = Point2.Dot(step, step);
        var fraction = square > 0 ? Math.Clamp(Point2.Dot(point - from, step) / square, 0, 1) : 0;
        return Point2.Between(from, to, fraction);
    }

    private static bool Cross(Point2 a, Point2 b, Point2 c, Point2 d) =>
        Point2.Cross(b - a, c - a) * Point2.Cross(b - a, d - a) < 0 && Point2.Cross(d - c, a - c) * Point2.Cross(d - c, b - c) < 0;
}
