namespace CoverPattern.Geometry;

/// <summary>Straight lines without ends.</summary>
public static class Lines
{
    /// <summary>The point where two lines meet.</summary>
    /// <param name="on">A point of the first line.</param>
    /// <param name="along">Its direction; any length but zero.</param>
    /// <param name="otherOn">A point of the second line.</param>
    /// <param name="otherAlong">Its direction; any length but zero.</param>
    /// <returns>Infinite or NaN coordinates when the lines are parallel.</returns>
    public static Point2 Meet(Point2 on, Point2 along, Point2 otherOn, Point2 otherAlong) =>
        on + (Point2.Cross(otherOn - on, otherAlong) / Point2.Cross(along, otherAlong) * along);

    /// <summary>Distance of a point from the line through two others, millimetres.</summary>
    public static double Distance(Point2 from, Point2 to, Point2 point) =>
        System.Math.Abs(Point2.Cross(to - from, point - from)) / Point2.Distance(from, to);
}
