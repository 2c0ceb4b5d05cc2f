using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>The foot of a cone boot on one facet: where rays from the apex meet the facet's plane.</summary>
/// <remarks>
/// With half angle a at the apex, apex height z over the foot of the axis and tilt t the plane lies at -rho cos(theta) tan t in the direction theta from
/// where it falls away, so the ray there meets it at z tan a / (1 - tan a tan t cos(theta)) from the axis. Its highest point is at theta = 180 degrees,
/// z tan a tan t / (1 + tan a tan t) above the foot of the axis (own derivation).
/// </remarks>
internal static class ConeFoot
{
    /// <summary>Height of the apex over the foot of the axis when the top, as wide as the sleeve, stands so high over the highest point of the foot.</summary>
    /// <param name="tangents">Tangents of half angle and tilt.</param>
    /// <param name="topRadius">Radius of the top, millimetres.</param>
    /// <param name="height">Of the top over the highest point of the foot.</param>
    internal static double Apex((double Spread, double Tilt) tangents, double topRadius, double height)
    {
        var rise = tangents.Spread * tangents.Tilt / (1 + (tangents.Spread * tangents.Tilt));
        return (height + (topRadius / tangents.Spread)) / (1 - rise);
    }

    /// <summary>The foot as a ring in the facet's chart, counter-clockwise seen from outside, and its farthest distance from the axis; null when the cone runs along the facet.</summary>
    /// <param name="axis">The pipe.</param>
    /// <param name="face">The facet's plane.</param>
    /// <param name="apex">Height of the apex over the foot of the axis.</param>
    /// <param name="spread">Tangent of the half angle.</param>
    internal static (ImmutableArray<Point2> Ring, double Farthest)? Draw(PipeAxis axis, FacePlane face, double apex, double spread)
    {
        var (across, aside, along) = (Point3.Dot(face.Normal, axis.Across), Point3.Dot(face.Normal, axis.Aside), Point3.Dot(face.Normal, axis.Outward));
        var steepest = Math.Sqrt((across * across) + (aside * aside)) / along;
        if (spread * steepest >= 1)
        {
            return null;
        }

        var farthest = apex * spread / (1 - (spread * steepest));
        var ring = Circles.Slanting(farthest, PipeAnchor.LeastSeen).Select(corner => corner.Unit()).Select(direction =>
        {
            var distance = apex * spread / (1 - (spread * ((across * direction.X) + (aside * direction.Y)) / along));
            var height = -distance * ((across * direction.X) + (aside * direction.Y)) / along;
            return face.ToChart(axis.Foot + (distance * ((direction.X * axis.Across) + (direction.Y * axis.Aside))) + (height * axis.Outward));
        });
        return ([.. ring], farthest);
    }
}
