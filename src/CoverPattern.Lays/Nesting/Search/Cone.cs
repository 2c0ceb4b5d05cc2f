namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The inside of an outline as seen from one of its points: all directions from one edge round to the other, counter-clockwise.</summary>
/// <param name="FromX">Step along the edge that leaves the point.</param>
/// <param name="FromY">Step along the edge that leaves the point.</param>
/// <param name="ToX">Step back along the edge that arrives.</param>
/// <param name="ToY">Step back along the edge that arrives.</param>
internal readonly record struct Cone(double FromX, double FromY, double ToX, double ToY)
{
    /// <summary>Tells whether two cones with one tip share a direction that is inside both; exact for whole steps.</summary>
    public static bool Overlap(in Cone left, in Cone right) =>
        left.Holds(right.FromX, right.FromY) || left.Holds(right.ToX, right.ToY)
        || right.Holds(left.FromX, left.FromY) || right.Holds(left.ToX, left.ToY)
        || SameWay(left.FromX, left.FromY, right.FromX, right.FromY)
        || SameWay(left.ToX, left.ToY, right.ToX, right.ToY);

    private bool Holds(double x, double y)
    {
        var opening = (FromX * ToY) - (FromY * ToX);
        var afterFrom = (FromX * y) - (FromY * x);
        var beforeTo = (x * ToY) - (y * ToX);
        if (opening > 0)
        {
            return afterFrom > 0 && beforeTo > 0;
        }

        if (opening < 0)
        {
            return afterFrom > 0 || beforeTo > 0;
        }

        // The edges lie on one line: a half plane when they run apart, nothing or all when they run together.
        return (FromX * ToX) + (FromY * ToY) < 0 && afterFrom > 0;
    }

    private static bool SameWay(double ax, double ay, double bx, double by) =>
        (ax * by) - (ay * bx) == 0 && (ax * bx) + (ay * by) > 0;
}
