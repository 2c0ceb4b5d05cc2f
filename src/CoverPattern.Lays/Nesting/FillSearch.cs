using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>The search behind <see cref="BottomLeftFill"/>: fills in one order after the other until the effort is spent.</summary>
internal sealed class FillSearch(OutlineTable table, IProgress<NestingProgress>? progress, CancellationToken cancel)
{
    private static readonly PlaceRule[] Rules = [PlaceRule.LeastRight, PlaceRule.LeastLeft, PlaceRule.LeastMiddle];

    // Parts of a lay whose tail is taken off and filled again; own choice.
    private static readonly double[] KeptParts = [0.95, 0.9, 0.8, 0.65, 0.5, 0.3];

    private readonly SplitMix64 chance = new(table.Task.Seed);
    private readonly long placesToLookFor = (long)table.Task.Effort * BottomLeftFill.PlacesPerUnit;
    private long placesLookedFor;
    private int[] bestOrder = [];
    private PlaceRule bestRule;
    private long bestRight = long.MaxValue;

    /// <summary>The shortest lay so far; empty while there is none.</summary>
    public IReadOnlyList<Placed> Best { get; private set; } = [];

    /// <summary>Searches from scratch.</summary>
    /// <exception cref="OperationCanceledException">Cancelled before the first lay was full.</exception>
    public void Run()
    {
        var rules = table.Outlines.Length > table.ByItem.Length ? Rules : Rules[..1];
        foreach (var order in FirstOrders())
        {
            foreach (var rule in rules)
            {
                if (IsOver())
                {
                    return;
                }

                Try(order, rule);
            }
        }

        while (!IsOver() && bestOrder.Length > 1)
        {
            Try(Changed(bestOrder), chance.Below(4) == 0 ? rules[chance.Below(rules.Length)] : bestRule);
        }
    }

    /// <summary>Takes the tail off a lay in several places and fills it again; the shortest is kept among the search's own.</summary>
    public void FillTails(IReadOnlyList<Placed> lay)
    {
        var right = lay.Max(p => p.Right);
        foreach (var part in KeptParts)
        {
            foreach (var rule in Rules)
            {
                if (IsOver())
                {
                    return;
                }

                var kept = lay.Where(p => p.Right <= right * part && table.IsClear(p)).ToList();
                var tail = lay.Except(kept).OrderByDescending(p => Area(p.Outline.Item)).ThenBy(p => p.Outline.Item);
                Keep(Filled(kept, [.. tail.Select(p => p.Outline.Item)], rule, Math.Min(bestRight, right)));
            }
        }
    }

    private bool IsOver() => (cancel.IsCancellationRequested && Best.Count > 0) || (placesLookedFor >= placesToLookFor && Best.Count > 0);

    private IEnumerable<int[]> FirstOrders()
    {
        var items = Enumerable.Range(0, table.ByItem.Length).ToArray();
        var keys = new Func<int, double>[]
        {
            Area,
            item => table.ByItem[item].Min(outline => outline.Height),
            item => table.ByItem[item].Min(outline => outline.Width),
        };
        return keys.Select(key => items.OrderByDescending(key).SelectMany(item => Enumerable.Repeat(item, table.CopiesToLay(item))).ToArray());
    }

    private double Area(int item) => Rings.SignedArea(table.Task.Items[item].Outline);

    private void Try(int[] order, PlaceRule rule)
    {
        if (Keep(Filled([], order, rule, bestRight)))
        {
            (bestOrder, bestRule) = (order, rule);
        }
    }

    private bool Keep(StripFill? filled)
    {
        if (filled is null || filled.Right >= bestRight)
        {
            return false;
        }

        (Best, bestRight) = (filled.Placed, filled.Right);
        return true;
    }

    /// <summary>Fills a strip; null as soon as it gets no shorter than a limit.</summary>
    private StripFill? Filled(IReadOnlyList<Placed> kept, int[] order, PlaceRule rule, long limit)
    {
        var fill = new StripFill(table, rule);
        foreach (var item in kept)
        {
            fill.Put(item);
        }

        foreach (var item in order)
        {
            if (cancel.IsCancellationRequested)
            {
                return Best.Count > 0 ? null : throw new OperationCanceledException(cancel);
            }

            fill.Add(item);
            placesLookedFor += table.ByItem[item].Length;
            if (fill.Right >= limit)
            {
                return null;
            }
        }

        Report(fill.Right);
        return fill;
    }

    private void Report(long right)
    {
        var units = (int)Math.Min(table.Task.Effort, placesLookedFor / BottomLeftFill.PlacesPerUnit);
        progress?.Report(new NestingProgress(units, table.Task.Effort, Math.Min(right, bestRight) / (double)Grid.StepsPerMillimetre));
    }

    private int[] Changed(int[] order)
    {
        var changed = new List<int>(order);
        for (var moves = 1 + chance.Below(3); moves > 0; moves--)
        {
            var from = chance.Below(2) == 0 ? chance.Below(changed.Count) : changed.Count - 1 - chance.Below((changed.Count + 3) / 4);
            var item = changed[from];
            changed.RemoveAt(from);
            changed.Insert(chance.Below(changed.Count + 1), item);
        }

        return [.. changed];
    }
}
