using System;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Cuts the point off a corner that stands out, for squared and trimmed corners.</summary>
internal static class CornerCut
{
    /// <summary>Cloth left beyond the sew line's corner at a trimmed corner, millimetres; common practice, no source.</summary>
    internal const double Margin = 2;

    // Flatter corners (less than this turn) hardly stand out when cut square: they keep their point.
    private const double LeastTurnSquared = 30;

    // At 120 degrees inside and more, a turn of 60 and less, a mitre folded back about one edge stays inside the other.
    private const double LeastTurnTrimmed = 60;

    internal static bool IsSquared(double turnDegrees) => turnDegrees >= LeastTurnSquared;

    internal static bool IsTrimmed(double turnDegrees) => turnDegrees > LeastTurnTrimmed;

    /// <summary>Cuts square across a direction at a distance from the corner.</summary>
    /// <param name="before">The edge that ends in the corner.</param>
    /// <param name="after">The edge that begins there.</param>
    /// <param name="outward">Direction of the point that is cut off, length 1.</param>
    /// <param name="distance">From the corner, millimetres.</param>
    internal static Point2[] Across(SewEdge before, SewEdge after, Point2 outward, double distance)
    {
        var square = before.To + (distance * outward);
        return
        [
            Lines.Meet(End(before), before.Along, square, outward.QuarterTurned()),
            Lines.Meet(Start(after), after.Along, square, outward.QuarterTurned()),
        ];
    }

    /// <summary>Trims the corner: from each allowance straight to a point a margin beyond the corner.</summary>
    /// <param name="before">The edge that ends in the corner.</param>
    /// <param name="after">The edge that begins there.</param>
    /// <param name="turn">Turn of the sew line at the corner, radians; more than 60 degrees.</param>
    /// <remarks>
    /// Square across the bisector down to 60 degrees inside. The allowance folded back about its edge then ends in the line that
    /// is 90 degrees and half the inside angle away from the edge; below 60 degrees that would stand out beyond the other edge,
    /// so there the cut is that edge mirrored.
    /// </remarks>
    internal static Point2[] Trim(SewEdge before, SewEdge after, double turn)
    {
        var outward = (before.Outward + after.Outward).Unit();
        var spread = Math.Max(Math.PI / 2, (1.5 * turn) - (Math.PI / 2));
        var tip = before.To + (Math.Min(Margin, Math.Min(before.Allowance, after.Allowance)) * outward);
        return
        [
            Lines.Meet(End(before), before.Along, tip, Turned(outward, -spread)),
            tip,
            Lines.Meet(Start(after), after.Along, tip, Turned(outward, spread)),
        ];
    }

    private static Point2 End(SewEdge edge) => edge.To + (edge.Allowance * edge.Outward);

    private static Point2 Start(SewEdge edge) => edge.From + (edge.Allowance * edge.Outward);

    private static Point2 Turned(Point2 direction, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new Point2((cos * direction.X) - (sin * direction.Y), (sin * direction.X) + (cos * direction.Y));
    }
}
