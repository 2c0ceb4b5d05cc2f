using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>A stove pipe at its place, and all that its cylinder cuts out of the cover.</summary>
/// <param name="Label">Such as "J1", counted in the order of the job's entries.</param>
/// <param name="Entry">Index of its entry in the job.</param>
/// <param name="Wish">That entry.</param>
/// <param name="Axis">Where its middle line meets the cover, and the plane square to it, seen from outside; the first axis points where the facet falls away.</param>
/// <param name="Region">What is taken out of the cover's cloth: all within the clear distance; the heat cloth's patch fills it.</param>
public sealed record LaidPipe(string Label, int Entry, PipeWish Wish, PipeAxis Axis, Region Region)
{
    /// <summary>The hole in the patch, the foot of sleeve or boot; its rim begins at its lowest place.</summary>
    public required Region Hole { get; init; }

    /// <summary>The rain flap laid on the cover.</summary>
    public required Region RainFlap { get; init; }

    /// <summary>The closing flap laid on the patch.</summary>
    public required Region ClosingFlap { get; init; }

    /// <summary>Angle between the pipe and the normal of the facet that holds its middle, radians.</summary>
    public required double Tilt { get; init; }

    /// <summary>Height of a cone boot's apex over the foot of the middle line, millimetres; null for a straight sleeve.</summary>
    public double? Apex { get; init; }

    /// <summary>Labels of the hubs that stand inside the clear distance's rim, or under a flap; then nothing can be sewn.</summary>
    public ImmutableArray<string> HubsInside { get; init; } = [];

    /// <summary>The foot of the sleeve in the pipe's own coordinates, z along it, counter-clockwise from its lowest place.</summary>
    /// <param name="shell">The shell on which it lies.</param>
    public ImmutableArray<Point3> FootOn(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);
        var axis = Axis;
        return
        [
            .. Hole.Rim.SelectMany(stretch =>
            {
                var plane = FacePlane.Of(shell, stretch.Face);
                return (stretch.IsRing ? stretch.Points : stretch.Points[..^1]).Select(point => axis.ToOwn(plane.ToSpace(point)));
            }),
        ];
    }

    /// <summary>Height of the sleeve's top over the foot of the middle line, millimetres.</summary>
    /// <param name="foot">See <see cref="FootOn"/>.</param>
    public double TopOver(ImmutableArray<Point3> foot) => foot.Max(point => point.Z) + Wish.Sleeve.Millimetres;
}
