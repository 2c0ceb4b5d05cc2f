using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>The middle line of a pipe, with two directions square to it.</summary>
/// <param name="Foot">Where it meets the cover, millimetres.</param>
/// <param name="Across">First direction square to it, length 1.</param>
/// <param name="Aside">Second one, a quarter turn counter-clockwise from the first, seen from outside.</param>
public readonly record struct PipeAxis(Point3 Foot, Point3 Across, Point3 Aside)
{
    /// <summary>Out of the cover along the pipe, length 1.</summary>
    public Point3 Outward => Point3.Cross(Across, Aside);

    /// <summary>The plane square to the pipe through its foot, seen from outside.</summary>
    internal FacePlane View => new(Foot, Across, Aside);

    /// <summary>A point of space in the pipe's own coordinates: across, aside, and outward along it from the foot.</summary>
    public Point3 ToOwn(Point3 point) => new(Point3.Dot(point - Foot, Across), Point3.Dot(point - Foot, Aside), Point3.Dot(point - Foot, Outward));
}
