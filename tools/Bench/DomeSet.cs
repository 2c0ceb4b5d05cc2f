using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>The 105 triangles of a 3V 5/8 dome, cut one by one with an allowance all round.</summary>
internal static class DomeSet
{
    /// <summary>Least distance between pieces, millimetres.</summary>
    public const double Spacing = 3;

    private const double Allowance = 15;

    // Chord factors of the three strut classes [Clinton 1971].
    private const double A = 0.34862;
    private const double B = 0.40355;
    private const double C = 0.41241;

    /// <summary>30 triangles AAB and 75 BCC, base along the strip.</summary>
    /// <param name="radius">Radius of the dome, millimetres.</param>
    /// <param name="turns">0 and 180 degrees, or free.</param>
    public static ImmutableArray<NestingItem> Triangles(double radius, AllowedTurns turns) =>
    [
        new NestingItem(Isosceles(B * radius, A * radius), [], 30, turns),
        new NestingItem(Isosceles(B * radius, C * radius), [], 75, turns),
    ];

    public static AllowedTurns Turns(string name) => name == "free" ? AllowedTurns.Free : AllowedTurns.HalfTurn;

    public static string Name(double radius, double width, string turns) =>
        string.Create(CultureInfo.InvariantCulture, $"dome3v-r{radius / 1000:F2}-w{width / 1000:F2}-{turns}");

    /// <summary>The triangle of a base and two equal sides, grown by the allowance with full corners.</summary>
    private static ImmutableArray<Point2> Isosceles(double foot, double side)
    {
        var height = Math.Sqrt((side * side) - (foot * foot / 4));
        Point2[] sewn = [new(0, 0), new(foot, 0), new(foot / 2, height)];
        // All edges of a triangle move out together when it grows from the centre of its inscribed circle.
        var inscribed = foot * height / (foot + (2 * side));
        var centre = new Point2(foot / 2, inscribed);
        return [.. sewn.Select(corner => Grid.Snap(centre + ((inscribed + Allowance) / inscribed * (corner - centre))))];
    }
}
