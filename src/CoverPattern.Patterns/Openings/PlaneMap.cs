using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>From a face's chart to the plane in which an outline is drawn: rigid where it is carried, squeezed where it is projected.</summary>
/// <param name="Origin">Where the chart's origin comes to lie, millimetres.</param>
/// <param name="X">Where a step of 1 along the chart's x leads.</param>
/// <param name="Y">Where a step of 1 along its y leads.</param>
internal readonly record struct PlaneMap(Point2 Origin, Point2 X, Point2 Y)
{
    /// <summary>By how much areas are squeezed; 1 where it is rigid, not positive where the face is seen from inside.</summary>
    internal double Squeeze => Point2.Cross(X, Y);

    /// <summary>The plane through a point of a face, up along a direction of its chart.</summary>
    internal static PlaneMap About(Point2 at, Point2 up)
    {
        var right = -1 * up.QuarterTurned();
        var map = new PlaneMap(default, new Point2(right.X, up.X), new Point2(right.Y, up.Y));
        return map with { Origin = -1 * map.ToPlane(at) };
    }

    /// <summary>A face seen square to the plane of another.</summary>
    /// <param name="plane">The plane with the outline's own axes.</param>
    /// <param name="face">The face's plane.</param>
    internal static PlaneMap Seen(FacePlane plane, FacePlane face)
    {
        Point2 Step(Point3 step) => new(Point3.Dot(step, plane.Along), Point3.Dot(step, plane.Across));
        return new PlaneMap(plane.ToChart(face.Origin), Step(face.Along), Step(face.Across));
    }

    internal Point2 ToPlane(Point2 chart) => Origin + (chart.X * X) + (chart.Y * Y);

    internal Point2 ToChart(Point2 plane)
    {
        var step = plane - Origin;
        return new Point2(Point2.Cross(step, Y) / Squeeze, Point2.Cross(X, step) / Squeeze);
    }

    /// <summary>The map of a chart that a rigid move brings into this one's chart.</summary>
    internal PlaneMap After(RigidMap move)
    {
        var origin = ToPlane(move.Apply(new Point2(0, 0)));
        return new PlaneMap(origin, ToPlane(move.Apply(new Point2(1, 0))) - origin, ToPlane(move.Apply(new Point2(0, 1))) - origin);
    }
}
