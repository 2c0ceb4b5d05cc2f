using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>Outlines about a pipe, in the plane square to it.</summary>
internal static class PipeOutlines
{
    // The rain flap reaches so far to either side of straight above the pipe (own choice), radians: a little below the middle.
    private const double HalfRain = 100 * Math.PI / 180;

    // Chords as those of the circles; on a facet seen under 75 degrees they stay as near to their arcs, millimetres.
    private const double Deviation = 0.019 * PipeAnchor.LeastSeen;

    /// <summary>A circle about the pipe.</summary>
    internal static ImmutableArray<Point2> Circle(double radius) => Circles.Slanting(radius, PipeAnchor.LeastSeen);

    /// <summary>Half a ring above the pipe.</summary>
    /// <param name="inner">Radius of its free edge, millimetres.</param>
    /// <param name="outer">Radius of the edge along which it is stitched down.</param>
    /// <param name="up">Where up is, any length but 0.</param>
    internal static ImmutableArray<Point2> Rain(double inner, double outer, Point2 up)
    {
        var middle = Math.Atan2(up.Y, up.X);
        return [.. Arc(outer, middle - HalfRain, middle + HalfRain), .. Arc(inner, middle + HalfRain, middle - HalfRain)];
    }

    private static IEnumerable<Point2> Arc(double radius, double from, double to)
    {
        var count = (int)Math.Ceiling(Math.Abs(to - from) / (2 * Math.Acos(1 - (Deviation / radius))));
        return Enumerable.Range(0, count + 1).Select(i => from + (i * (to - from) / count)).Select(angle => radius * new Point2(Math.Cos(angle), Math.Sin(angle)));
    }
}
