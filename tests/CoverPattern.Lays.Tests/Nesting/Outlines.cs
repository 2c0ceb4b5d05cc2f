using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Outlines and tasks for tests.</summary>
internal static class Outlines
{
    // Chord factors of the 3V icosahedron, class I: A, B, C as in [Clinton 1971].
    private const double ChordA = 0.348615;
    private const double ChordB = 0.403548;
    private const double ChordC = 0.412411;

    public static ImmutableArray<Point2> Box(double width, double height) =>
        Grid.Snap([new(0, 0), new(width, 0), new(width, height), new(0, height)]);

    /// <summary>Triangle with its base along x and two equal sides, grown outward with full mitres.</summary>
    public static ImmutableArray<Point2> Triangle(double baseLength, double side, double allowance)
    {
        var height = Math.Sqrt((side * side) - (baseLength * baseLength / 4));
        var inradius = baseLength * height / (baseLength + (2 * side));
        var centre = new Point2(baseLength / 2, inradius);
        Point2[] corners = [new(0, 0), new(baseLength, 0), new(baseLength / 2, height)];
        return Grid.Snap(corners.Select(corner => centre + ((inradius + allowance) / inradius * (corner - centre))));
    }

    /// <summary>The 30 AAB and 75 BCC triangles of a 3V 5/8 frame, 15 mm allowance, 3 mm apart.</summary>
    public static NestingTask Dome(double radius, double width, AllowedTurns turns) => new(
        width,
        3,
        [
            Item(Triangle(ChordB * radius, ChordA * radius, 15), 30, turns),
            Item(Triangle(ChordB * radius, ChordC * radius, 15), 75, turns),
        ],
        Effort: 100,
        Seed: 1);

    public static NestingItem Item(ImmutableArray<Point2> outline, int quantity, AllowedTurns turns) => new(outline, [], quantity, turns);

    /// <summary>A ring round a centre with corners at uneven angles and distances: concave, needles, near-touching.</summary>
    public static ImmutableArray<Point2> Star(Random chance, double size)
    {
        while (true)
        {
            var corners = chance.Next(3, 13);
            var angles = Enumerable.Range(0, corners).Select(_ => chance.NextDouble() * 2 * Math.PI).Order().ToArray();
            var ring = Grid.Snap(angles.Select(angle => size * (0.1 + (0.9 * chance.NextDouble())) * new Point2(Math.Cos(angle), Math.Sin(angle))));
            if (ExactPredicates.IsSimple(Rings.ToSteps(ring)) && Rings.SignedArea(ring) > 0)
            {
                return ring;
            }
        }
    }

    /// <summary>A task of random outlines that all fit the strip.</summary>
    public static NestingTask RandomTask(int seed)
    {
        var chance = new Random(seed);
        AllowedTurns[] turns = [AllowedTurns.None, AllowedTurns.HalfTurn, AllowedTurns.Free, new([0, 90, 180, 270], IsFree: false), new([30, 210], IsFree: false)];
        var items = Enumerable.Range(0, chance.Next(1, 6)).Select(_ => Item(
            chance.Next(4) == 0 ? Box(10 + chance.Next(200), 10 + chance.Next(200)) : Star(chance, 20 + chance.Next(150)),
            chance.Next(1, 6),
            turns[chance.Next(turns.Length)]));
        double[] spacings = [0, 3, 0.7];
        return new NestingTask(400 + chance.Next(400), spacings[chance.Next(3)], [.. items], Effort: 2, Seed: seed);
    }
}
