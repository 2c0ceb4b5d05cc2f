using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>The pieces of a 3V 5/8 dome with an allowance all round: 105 triangles, or 25 parts of rows.</summary>
internal static class DomeSet
{
    /// <summary>Least distance between pieces, millimetres.</summary>
    public const double Spacing = 3;

    private const double Allowance = 15;

    // Chord factors of the three strut classes [Clinton 1971].
    private const double A = 0.34862;
    private const double B = 0.40355;
    private const double C = 0.41241;

    public static ImmutableArray<NestingItem> Items(string pieces, double radius, AllowedTurns turns) => pieces == "panels" ? Panels(radius, turns) : Triangles(radius, turns);

    /// <summary>30 triangles AAB and 75 BCC, base along the strip.</summary>
    /// <param name="radius">Radius of the dome, millimetres.</param>
    /// <param name="turns">0 and 180 degrees, or free.</param>
    private static ImmutableArray<NestingItem> Triangles(double radius, AllowedTurns turns) =>
    [
        new NestingItem(Isosceles(B * radius, A * radius), [], 30, turns),
        new NestingItem(Isosceles(B * radius, C * radius), [], 75, turns),
    ];

    /// <summary>Every row cut into fifths, unfolded: five each of 1, 3, 5, 6 and 6 facets, the chord of the lower line along the strip.</summary>
    /// <param name="radius">Radius of the dome, millimetres.</param>
    /// <param name="turns">0 and 180 degrees, or free.</param>
    private static ImmutableArray<NestingItem> Panels(double radius, AllowedTurns turns) =>
        [.. Rows.Select(row => new NestingItem(UnfoldedRow.Outline(row.Start * radius, [.. row.Hubs.Select(hub => hub with { ToUpper = hub.ToUpper * radius, ToLower = hub.ToLower * radius })], Allowance), [], 5, turns))];

    // A fifth of each row from the top down: the strut it begins at, then hub after hub with its chords to the last of the upper and of the lower line.
    private static readonly (double Start, UnfoldedRow.Hub[] Hubs)[] Rows =
    [
        (A, [new(true, A, B)]),
        (B, [new(true, C, C), new(false, B, C), new(true, B, C)]),
        (A, [new(true, B, A), new(false, C, C), new(true, C, B), new(false, C, B), new(true, A, A)]),
        (A, [new(false, A, B), new(true, C, C), new(false, B, C), new(true, B, C), new(false, A, A), new(true, A, B)]),
        (B, [new(false, C, C), new(true, C, B), new(false, C, B), new(true, C, C), new(false, B, C), new(true, B, C)]),
    ];

    public static AllowedTurns Turns(string name) => name == "free" ? AllowedTurns.Free : AllowedTurns.HalfTurn;

    public static string Name(string pieces, double radius, double width, string turns) =>
        string.Create(CultureInfo.InvariantCulture, $"dome3v-{pieces}-r{radius / 1000:F2}-w{width / 1000:F2}-{turns}");

    /// <summary>The triangle of a base and two equal sides, grown by the allowance with full corners.</summary>
    private static ImmutableArray<Point2> Isosceles(double foot, double side)
    {
        var height = Math.Sqrt((side * side) - (foot * foot / 4));
        return UnfoldedRow.Grown([new(0, 0), new(foot, 0), new(foot / 2, height)], Allowance);
    }
}
