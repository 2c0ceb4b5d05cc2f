using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Unrolls tubes and cones whose foot is any closed line, exactly: their sides are planes between neighbouring points of the foot.</summary>
/// <remarks>
/// A point of the foot is given by its place across the axis and its height along it, counter-clockwise seen against the axis. Every step of the
/// unrolled foot is as long as in space, so that the foot fits what it stands on to the last digit. For a circle under a slanting plane this
/// is the curve of [Apostol Mnatsakanian 2007] to within the chords' height.
/// </remarks>
public static class TubeUnrolling
{
    /// <summary>The foot of a straight tube, unrolled.</summary>
    /// <param name="foot">Points of the foot, millimetres; z along the axis; first point not repeated.</param>
    /// <returns>One point more than the foot: x from 0 along the girth, y the height; the first point stands at both ends.</returns>
    public static ImmutableArray<Point2> Straight(ImmutableArray<Point3> foot)
    {
        var unrolled = ImmutableArray.CreateBuilder<Point2>(foot.Length + 1);
        var along = 0.0;
        for (var i = 0; i <= foot.Length; i++)
        {
            var here = foot[i % foot.Length];
            along += i == 0 ? 0 : Point2.Distance(foot[i - 1].Plan, here.Plan);
            unrolled.Add(new Point2(along, here.Z));
        }

        return unrolled.MoveToImmutable();
    }

    /// <summary>A cone over a foot, cut off square to its axis.</summary>
    /// <param name="foot">As for a straight tube.</param>
    /// <param name="apex">Height of the apex on the axis, above all of the foot, millimetres.</param>
    /// <param name="top">Height at which the cone is cut off, between foot and apex.</param>
    /// <returns>Foot and top, one point more than the foot each, the apex at the origin, the foot below it from left to right.</returns>
    public static (ImmutableArray<Point2> Foot, ImmutableArray<Point2> Top) Cone(ImmutableArray<Point3> foot, double apex, double top)
    {
        var peak = new Point3(0, 0, apex);
        var rays = foot.Select(point => point - peak).ToArray();
        var turns = rays.Select((ray, i) => Angle(ray, rays[(i + 1) % rays.Length])).ToArray();
        var angle = -(Math.PI / 2) - (turns.Sum() / 2);
        var (lower, upper) = (ImmutableArray.CreateBuilder<Point2>(foot.Length + 1), ImmutableArray.CreateBuilder<Point2>(foot.Length + 1));
        for (var i = 0; i <= foot.Length; i++)
        {
            var ray = rays[i % rays.Length];
            var direction = new Point2(Math.Cos(angle), Math.Sin(angle));
            lower.Add(ray.Length * direction);
            upper.Add(ray.Length * (apex - top) / -ray.Z * direction);
            angle += turns[i % turns.Length];
        }

        return (lower.MoveToImmutable(), upper.MoveToImmutable());
    }

    private static double Angle(Point3 left, Point3 right) => Math.Atan2(Point3.Cross(left, right).Length, Point3.Dot(left, right));
}
