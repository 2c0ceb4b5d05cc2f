using System;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>The marks that tell how a pane, a ring and a rim lie on each other, equal in all windows of a size.</summary>
public static class WindowMarks
{
    // Ticks this far from the one that is up make it a triple (own choice), millimetres on the rim.
    private const double CompanionGap = 10;
    private const double LargestShare = 0.25;

    // The stitching of the ring stays open so far on both sides of the lowest point (own choice), millimetres.
    private const double DrainHalf = 15;

    /// <summary>Four quarters, and one more on each side of the upper one; the same from inside and outside.</summary>
    /// <param name="up">Up for the window, length 1.</param>
    /// <param name="apertureRadius">Millimetres.</param>
    /// <returns>Directions from the centre, length 1.</returns>
    public static ImmutableArray<Point2> Quarters(Point2 up, double apertureRadius)
    {
        var left = up.QuarterTurned();
        return [up, left, -1 * up, -1 * left, .. Beside(up, apertureRadius, CompanionGap)];
    }

    /// <summary>The two ends of the gap that is left in the outer stitching for water.</summary>
    /// <param name="up">Up for the window, length 1.</param>
    /// <param name="outerRadius">Radius of the ring, millimetres.</param>
    public static ImmutableArray<Point2> Drain(Point2 up, double outerRadius) => Beside(-1 * up, outerRadius, DrainHalf);

    private static ImmutableArray<Point2> Beside(Point2 middle, double radius, double gap)
    {
        var angle = Math.Min(LargestShare, gap / radius);
        var aside = Math.Sin(angle) * middle.QuarterTurned();
        return [(Math.Cos(angle) * middle) + aside, (Math.Cos(angle) * middle) - aside];
    }
}
