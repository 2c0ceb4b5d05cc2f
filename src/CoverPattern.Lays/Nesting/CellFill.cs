using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Nesting;

/// <summary>Repeated patterns: a few copies are laid on a strip bent round, as short as it gets, and repeated along the strip.</summary>
/// <remarks>
/// A cell holds the same part of every item, so that copies in any proportion repeat together; or copies of one item alone, cells of one
/// item behind the other's. Two copies half turned make a double lattice when the strip is wide enough for one pair only; wider strips
/// hold several rows of it, shifted and interlocked as the search finds them. Behind the last cell the copies left over are filled in.
/// </remarks>
internal static class CellFill
{
    // Cells of more copies are searched no better than the whole lay; fewer repeats than this are none. Own choices.
    private const int MostInCell = 24;
    private const int LeastRepeats = 3;
    private const int MostCells = 10;

    // Work units for a first look at a cell where the task's effort gives them: so few copies are soon laid nearly as short as they get.
    private const int UnitsForACell = 3;

    // The most promising cells are searched once more, each for this part of the task's effort, laid out and filled up.
    private const int MostLaidOut = 3;
    private const int PartForACell = 10;

    /// <summary>The shortest lay of repeated cells.</summary>
    /// <param name="task">What is to be placed; without flaws and copies that stay.</param>
    /// <param name="cancel">Stops between two cells.</param>
    /// <returns>Null when the items are too few or too mixed to repeat, or the work was stopped before.</returns>
    public static NestingLayout? Fill(NestingTask task, CancellationToken cancel)
    {
        var cells = Cells(task).TakeWhile(_ => !cancel.IsCancellationRequested).Select(counts => (Counts: counts, Cell: Searched(task, counts, UnitsForACell, cancel))).ToArray();
        var units = task.Effort / PartForACell;
        return cells.OrderBy(entry => Waste(task, entry.Counts, entry.Cell)).Take(MostLaidOut).TakeWhile(_ => !cancel.IsCancellationRequested)
            .Select(entry => entry with { Cell = units > UnitsForACell ? Shorter(entry.Cell, Searched(task, entry.Counts, units, cancel)) : entry.Cell })
            .Select(entry => LaidOut(task, entry.Counts, entry.Cell)).OfType<NestingLayout>().DefaultIfEmpty().MinBy(layout => layout?.Length);
    }

    private static NestingLayout Shorter(NestingLayout one, NestingLayout other) => other.Length < one.Length ? other : one;

    /// <summary>How many copies of each item a cell holds, the smallest cells first.</summary>
    private static IEnumerable<ImmutableArray<int>> Cells(NestingTask task)
    {
        var all = task.Items.Select(item => item.Quantity).ToImmutableArray();
        var most = all.Max();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var found = new List<ImmutableArray<int>>();
        for (var repeats = LeastRepeats; repeats <= most; repeats++)
        {
            ImmutableArray<int> counts = [.. all.Select(count => count / repeats)];
            if (counts.Sum() is >= 2 and <= MostInCell && seen.Add(string.Join(' ', counts)))
            {
                found.Add(counts);
            }
        }

        // Of many the fewest left over, then the smallest.
        return found.OrderBy(counts => Left(task, counts)).ThenBy(counts => counts.Sum()).Take(MostCells);
    }

    private static double Left(NestingTask task, ImmutableArray<int> counts)
    {
        var repeats = Repeats(task, counts);
        return task.Items.Select((item, i) => (item.Quantity - (repeats * counts[i])) * Rings.SignedArea(item.Outline)).Sum();
    }

    private static int Repeats(NestingTask task, ImmutableArray<int> counts) =>
        counts.Select((count, i) => count > 0 ? task.Items[i].Quantity / count : int.MaxValue).Min();

    private static NestingLayout Searched(NestingTask task, ImmutableArray<int> counts, int units, CancellationToken cancel)
    {
        var numbers = Enumerable.Range(0, counts.Length).Where(i => counts[i] > 0).ToArray();
        var cell = task with { Items = [.. numbers.Select(number => task.Items[number] with { Quantity = counts[number] })], Effort = Math.Min(units, task.Effort), Start = null };
        var found = StripSearch.Find(cell, new SearchOptions { IsRound = true }, cancel);
        return found with { Placements = [.. found.Placements.Select(place => place with { Item = numbers[place.Item] })] };
    }

    /// <summary>Length of the lay as far as the cell tells: its repeats, and what is left over no denser than they.</summary>
    private static double Waste(NestingTask task, ImmutableArray<int> counts, NestingLayout cell)
    {
        var area = task.Items.Select((item, i) => counts[i] * Rings.SignedArea(item.Outline)).Sum();
        return (Repeats(task, counts) * cell.Length) + (Left(task, counts) * cell.Length / area);
    }

    /// <summary>The cell again and again from where the ends are least ragged, and the rest filled in behind; null beyond the grid's reach.</summary>
    private static NestingLayout? LaidOut(NestingTask task, ImmutableArray<int> counts, NestingLayout cell)
    {
        var repeats = Repeats(task, counts);
        var boxes = cell.Placements.Select(place => Rings.Bounds(place.Apply(task.Items[place.Item].Outline))).ToArray();
        var whole = boxes.Select(box => box.Low.X).Distinct().Select(from => Repeated(cell, boxes, from, repeats)).MinBy(one => one.Length);
        if (whole.Length > Grid.LargestMillimetres)
        {
            return null;
        }

        var table = new OutlineTable(task with { Fixed = whole.Places, Start = null });
        var fill = new StripFill(table, PlaceRule.LeastRight);
        foreach (var item in Enumerable.Range(0, task.Items.Length).OrderByDescending(item => Rings.SignedArea(task.Items[item].Outline)))
        {
            for (var copy = table.CopiesToLay(item); copy > 0; copy--)
            {
                fill.Add(item);
            }
        }

        return Placed.ToLayout(fill.Placed, "cells");
    }

    /// <summary>All copies of some repeats; a copy left of the cut belongs to the end of the cell.</summary>
    private static (ImmutableArray<NestingPlacement> Places, double Length) Repeated(NestingLayout cell, Box2[] boxes, double from, int repeats)
    {
        var places = ImmutableArray.CreateBuilder<NestingPlacement>();
        var end = 0.0;
        for (var repeat = 0; repeat < repeats; repeat++)
        {
            for (var i = 0; i < boxes.Length; i++)
            {
                var shift = (repeat * cell.Length) + (boxes[i].Low.X < from ? cell.Length : 0) - from;
                places.Add(cell.Placements[i] with { Shift = cell.Placements[i].Shift + new Point2(shift, 0) });
                end = Math.Max(end, boxes[i].High.X + shift);
            }
        }

        return (places.ToImmutable(), end);
    }
}
