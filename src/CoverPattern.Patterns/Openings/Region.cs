using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A part of a shell that is taken out and filled otherwise: laid, not yet cut.</summary>
/// <param name="Label">Label of its rim, such as "R001".</param>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Centre">Middle of its circle.</param>
/// <param name="Radius">Radius of its circle, the finished edge, millimetres.</param>
/// <param name="Up">Direction in the chart that is up for what fills it, length 1.</param>
/// <param name="Allowance">Cloth of the shell inside the rim, millimetres.</param>
public sealed record Region(string Label, string Purpose, SurfacePoint Centre, double Radius, Point2 Up, double Allowance)
{
    /// <summary>Width of what is sewn on round its border, outside of it, millimetres.</summary>
    public double RingMm { get; init; }

    /// <summary>Its border: ring, counter-clockwise seen from outside, of the circle's exact area.</summary>
    public ImmutableArray<SurfacePoint> Outline =>
        [.. Circles.Unsnapped(Centre.At, Radius).Select(point => Centre with { At = point })];
}
