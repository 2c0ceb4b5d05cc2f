using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Lays.Nesting;

/// <summary>Ways to part the width of the strip into rows.</summary>
internal static class RowSplits
{
    // Beyond this many ways the rows' gain no longer pays the time; own choice.
    private const int MostSplits = 240;

    // For many copies fewer ways are tried: so many copies are set in all; and fewer still for many kinds, whose neighbours are all new.
    private const int LeastSplits = 4;
    private const int CopiesToSet = 60_000;
    private const int OutlinesToSet = 20_000;
    private const int MostHeights = 8;

    /// <summary>All ways to stack rows of the items' heights with the spacing between, in which no further row has room.</summary>
    /// <param name="table">Outlines.</param>
    /// <param name="items">Items that must each fit some row.</param>
    /// <returns>Row heights, lowest row first; what is left of the width is given to one row or shared by all.</returns>
    public static ImmutableArray<ImmutableArray<long>> Of(OutlineTable table, IReadOnlyList<int> items)
    {
        var heights = Heights(table, items);
        var needed = items.Max(item => table.ByItem[item].Min(outline => outline.Height));
        var stacks = new List<ImmutableArray<long>>();
        Stack(table, heights, [], stacks);
        return [.. stacks.Where(stack => stack.Max() >= needed).SelectMany(stack => WithRest(table, stack)).Take(Most(table))];
    }

    /// <summary>How many ways are tried.</summary>
    private static int Most(OutlineTable table) =>
        Math.Clamp(Math.Min(CopiesToSet / Math.Max(1, table.Copies), OutlinesToSet / table.Outlines.Length), LeastSplits, MostSplits);

    private static long[] Heights(OutlineTable table, IReadOnlyList<int> items)
    {
        var all = items.SelectMany(item => table.ByItem[item]).Select(outline => outline.Height).Distinct().OrderDescending().ToArray();
        var needed = items.Max(item => table.ByItem[item].Min(outline => outline.Height));
        return all.Length <= MostHeights
            ? all
            : [.. Enumerable.Range(0, MostHeights - 1).Select(i => all[i * (all.Length - 1) / (MostHeights - 2)]).Append(needed).Distinct().OrderDescending()];
    }

    private static void Stack(OutlineTable table, long[] heights, ImmutableArray<long> below, List<ImmutableArray<long>> stacks)
    {
        var left = table.Width - below.Sum(height => height + table.Spacing);
        var fitting = heights.Where(height => height <= left).ToArray();
        if (fitting.Length == 0 && below.Length > 0)
        {
            stacks.Add(below);
        }

        foreach (var height in fitting.Where(height => below.Length == 0 || height <= below[^1]))
        {
            if (stacks.Count < MostSplits)
            {
                Stack(table, heights, below.Add(height), stacks);
            }
        }
    }

    private static IEnumerable<ImmutableArray<long>> WithRest(OutlineTable table, ImmutableArray<long> stack)
    {
        var rest = table.Width - stack.Sum() - ((stack.Length - 1) * table.Spacing);
        yield return [.. stack.Select(height => height + (rest / stack.Length))];
        for (var i = 0; i < stack.Length && stack.Length > 1; i++)
        {
            if (i == 0 || stack[i] != stack[i - 1])
            {
                yield return stack.SetItem(i, stack[i] + rest);
            }
        }
    }
}
