using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>Leaves out points of a rim that lie all but on the line it crosses: on the grid so short a step has no direction.</summary>
internal static class RimTidying
{
    // A corner nearer than this to the crossing is the crossing, millimetres.
    private const double OneCorner = 0.05;

    // A point of a curve may be left out farther away: with steps of 8 mm that moves the curve by a hundredth of a millimetre at most.
    private const double OnCurve = 0.25;

    // What bends more than this is a corner, degrees: steps of curves bend by 15 at most.
    private const double CornerBend = 20;

    /// <summary>The stretch without points too near to its ends; a ring as it is.</summary>
    internal static RimStretch Tidy(RimStretch stretch) => stretch.IsRing ? stretch : stretch with { Points = [.. WithoutSecond([.. WithoutSecond(stretch.Points).Reverse()]).Reverse()] };

    private static ImmutableArray<Point2> WithoutSecond(ImmutableArray<Point2> points)
    {
        while (points.Length > 2 && Point2.Distance(points[0], points[1]) < (Bend(points) < CornerBend ? OnCurve : OneCorner))
        {
            points = points.RemoveAt(1);
        }

        return points;
    }

    private static double Bend(ImmutableArray<Point2> points)
    {
        var (before, after) = (points[1] - points[0], points[2] - points[1]);
        return Math.Abs(Math.Atan2(Point2.Cross(before, after), Point2.Dot(before, after))) * 180 / Math.PI;
    }
}
