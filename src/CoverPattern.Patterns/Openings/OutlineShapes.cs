using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>Draws the outlines of openings in their own plane: x to the right, y up, seen from outside, the origin in the middle.</summary>
public static class OutlineShapes
{
    // The drawn chords stay this near to their arcs, millimetres: as circles do.
    private const double Deviation = 0.019;

    /// <summary>The outline as a ring, counter-clockwise, first point not repeated, millimetres.</summary>
    /// <param name="wish">Its form; whole facets have no outline in a plane.</param>
    public static ImmutableArray<Point2> Draw(OutlineWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var (width, height) = (wish.Width.Millimetres, wish.Height.Millimetres);
        return wish.Form switch
        {
            OutlineForm.Circle => Circles.Unsnapped(default, width / 2),
            OutlineForm.Rectangle => Box(width, height),
            OutlineForm.Rounded => Rounded(width, height, wish.Corner.Millimetres),
            OutlineForm.Arch => Arch(width, height),
            OutlineForm.Regular => [.. Enumerable.Range(0, wish.Sides).Select(i => OnCircle(default, width / 2, (Math.PI / 2) + (2 * Math.PI * i / wish.Sides)))],
            OutlineForm.Polygon => Rings.SignedArea(wish.Points) > 0 ? wish.Points : [.. wish.Points.Reverse()],
            _ => throw new ArgumentOutOfRangeException(nameof(wish), wish.Form, "Whole facets have no outline in a plane."),
        };
    }

    /// <summary>A ring turned about the origin.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="degrees">Counter-clockwise.</param>
    public static ImmutableArray<Point2> Turned(ImmutableArray<Point2> ring, double degrees) => RigidMap.FromDegrees(degrees, default, mirrored: false).Apply(ring);

    private static ImmutableArray<Point2> Box(double width, double height) =>
        [new(-width / 2, -height / 2), new(width / 2, -height / 2), new(width / 2, height / 2), new(-width / 2, height / 2)];

    private static ImmutableArray<Point2> Rounded(double width, double height, double corner) => Distinct(
        Box(width - (2 * corner), height - (2 * corner)).SelectMany((middle, i) => Arc(middle, corner, (-Math.PI) + (i * Math.PI / 2), Math.PI / 2)));

    private static ImmutableArray<Point2> Arch(double width, double height)
    {
        var middle = new Point2(0, (height / 2) - (width / 2));
        return Distinct([new Point2(-width / 2, -height / 2), new Point2(width / 2, -height / 2), .. Arc(middle, width / 2, 0, Math.PI)]);
    }

    private static IEnumerable<Point2> Arc(Point2 centre, double radius, double from, double sweep)
    {
        var steps = radius <= 0 ? 0 : Math.Max(2, (int)Math.Ceiling(sweep / (2 * Math.Acos(1 - Math.Min(1, Deviation / radius)))));
        return steps == 0 ? [centre] : Enumerable.Range(0, steps + 1).Select(i => OnCircle(centre, radius, from + (sweep * i / steps)));
    }

    private static Point2 OnCircle(Point2 centre, double radius, double angle) => centre + (radius * new Point2(Math.Cos(angle), Math.Sin(angle)));

    /// <summary>Without points that lie on the one before: where a straight side has no length.</summary>
    private static ImmutableArray<Point2> Distinct(IEnumerable<Point2> ring)
    {
        var points = ring.ToArray();
        return [.. points.Where((point, i) => Point2.Distance(point, points[(i + points.Length - 1) % points.Length]) > 1e-6)];
    }
}
