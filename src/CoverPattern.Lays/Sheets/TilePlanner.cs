using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Sheets;

/// <summary>Parts a large drawing among sheets of paper: the way up, and the place of the first sheet, that need fewest sheets.</summary>
public static class TilePlanner
{
    // Places tried for the first sheet in each direction within the room that is left over; own choice.
    private const int Shifts = 4;

    // Lines keep this far from the rim of what is shown, millimetres: half a pen's width, and no rounding can lose them.
    private const double Rim = 0.5;

    /// <summary>Parts a drawing.</summary>
    /// <param name="lines">What must be seen: lines of at least two points each, closed ones with their first point repeated.</param>
    /// <param name="wish">The paper; it must have room.</param>
    /// <returns>The plan with fewest tiles; of equal ones the first, upright before turned.</returns>
    public static TilePlan Plan(ImmutableArray<ImmutableArray<Point2>> lines, TileWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (!wish.HasRoom)
        {
            throw new ArgumentOutOfRangeException(nameof(wish), wish, "A sheet needs room for the test square beside its margins and overlap.");
        }

        var drawn = Rings.Bounds(lines.SelectMany(line => line));
        var whole = new Box2(drawn.Low - new Point2(Rim, Rim), drawn.High + new Point2(Rim, Rim));
        TileWish[] ways = [wish, wish with { Sheet = wish.Sheet.Turned }];
        return ways.Distinct().SelectMany(way => Places(way, whole)).Select(plan => plan with { Tiles = Numbered(plan, lines) }).MinBy(plan => plan.Tiles.Length)!;
    }

    private static IEnumerable<TilePlan> Places(TileWish wish, Box2 whole)
    {
        var plan = new TilePlan(wish, whole.Low, 1, 1, []);
        plan = plan with { Columns = Count(whole.Width, plan.Step.X, wish), Rows = Count(whole.Height, plan.Step.Y, wish) };
        var free = plan.Area(plan.Columns - 1, plan.Rows - 1).High - whole.High;
        for (var i = 0; i <= Shifts; i++)
        {
            for (var j = 0; j <= Shifts; j++)
            {
                // The first is the one in the middle, which is what a person would do.
                var (x, y) = (((i + (Shifts / 2)) % (Shifts + 1)) * free.X / Shifts, ((j + (Shifts / 2)) % (Shifts + 1)) * free.Y / Shifts);
                yield return plan with { Origin = whole.Low - new Point2(x, y) };
            }
        }
    }

    private static int Count(double size, double step, TileWish wish) => Math.Max(1, (int)Math.Ceiling((size - wish.OverlapMm) / step));

    private static ImmutableArray<Tile> Numbered(TilePlan plan, ImmutableArray<ImmutableArray<Point2>> lines)
    {
        var drawn = new bool[plan.Columns, plan.Rows];
        foreach (var line in lines)
        {
            for (var i = 1; i < line.Length; i++)
            {
                Mark(drawn, plan, line[i - 1], line[i]);
            }
        }

        var places = Enumerable.Range(0, plan.Rows).Reverse().SelectMany(row => Enumerable.Range(0, plan.Columns).Select(column => (column, row)));
        return [.. places.Where(place => drawn[place.column, place.row]).Select((place, i) => new Tile(i + 1, place.column, place.row, plan.Area(place.column, place.row)))];
    }

    private static void Mark(bool[,] drawn, TilePlan plan, Point2 from, Point2 to)
    {
        var (left, right) = Range(from.X, to.X, plan.Origin.X, plan.Step.X, plan.Columns);
        var (low, high) = Range(from.Y, to.Y, plan.Origin.Y, plan.Step.Y, plan.Rows);
        for (var column = left; column <= right; column++)
        {
            for (var row = low; row <= high; row++)
            {
                drawn[column, row] |= BoxClip.Within(Own(plan, column, row), from, to) is not null;
            }
        }
    }

    private static (int First, int Last) Range(double from, double to, double origin, double step, int count) => (
        Math.Clamp((int)Math.Floor((Math.Min(from, to) - origin) / step) - 1, 0, count - 1),
        Math.Clamp((int)Math.Floor((Math.Max(from, to) - origin) / step) + 1, 0, count - 1));

    /// <summary>The part of a tile that no other need show: to the middle of each overlap, and to the rim of the outer ones.</summary>
    private static Box2 Own(TilePlan plan, int column, int row)
    {
        var (area, half) = (plan.Area(column, row), plan.Wish.OverlapMm / 2);
        return new Box2(
            area.Low + new Point2(column > 0 ? half : 0, row > 0 ? half : 0),
            area.High - new Point2(column < plan.Columns - 1 ? half : 0, row < plan.Rows - 1 ? half : 0));
    }
}
