using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

/// <summary>Makes outlines of many kinds by seeded chance.</summary>
internal static class RandomOutlines
{
    /// <summary>A star-shaped ring, counter-clockwise: about the origin, corner k at angle k; spikes make it concave or needle-like.</summary>
    public static ImmutableArray<Point2> Star(Chance chance, int corners, double size)
    {
        var squash = chance.Below(4) == 0 ? 0.05 : 1;
        return [.. Enumerable.Range(0, corners).Select(k =>
        {
            var angle = 2 * Math.PI * k / corners;
            var reach = size * (0.3 + (0.7 * chance.Unit()));
            return Grid.Snap(new Point2(reach * Math.Cos(angle), squash * reach * Math.Sin(angle)));
        })];
    }

    /// <summary>A staircase with whole-number corners, so that contacts along edges and at corners are common.</summary>
    public static ImmutableArray<Point2> Stairs(Chance chance)
    {
        var (a, b, c, d) = (chance.Between(1, 4), chance.Between(1, 4), chance.Between(1, 4), chance.Between(1, 4));
        return [new(0, 0), new(a + b, 0), new(a + b, c), new(a, c), new(a, c + d), new(0, c + d)];
    }

    /// <summary>A square frame with a square hole.</summary>
    public static NestingItem Frame(int outer, int hole, int quantity)
    {
        var (low, high) = ((outer - hole) / 2, (outer + hole) / 2);
        return new NestingItem(
            [new(0, 0), new(outer, 0), new(outer, outer), new(0, outer)],
            [[new(low, low), new(low, high), new(high, high), new(high, low)]],
            quantity,
            AllowedTurns.None);
    }

    public static NestingItem Item(ImmutableArray<Point2> outline, int quantity, AllowedTurns turns) => new(outline, [], quantity, turns);

    public static NestingTask Mixed(int seed, double spacing, int effort)
    {
        var chance = new Chance(seed, 99);
        var items = Enumerable.Range(0, 6).Select(k => k % 2 == 0
            ? Item(Star(chance, chance.Between(3, 24), chance.Between(20, 60)), 2, AllowedTurns.HalfTurn)
            : Item([.. Stairs(chance).Select(p => 10 * p)], 2, new AllowedTurns([0, 90, 180, 270], IsFree: false)));
        return new NestingTask(200, spacing, [.. items], effort, seed);
    }
}
