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

    // Looking for the leftmost place goes through all that lies on the strip: in one go the work would grow with the square of the copies.
    // From so many on, copies are filled in go by go, each behind the ragged end of the last; fewer a go where their kinds are many. Own choice.
    private const int MostInAGo = 400;
    private const int LeastInAGo = 50;
    private const int OutlinesByCopiesInAGo = 40_000;

    // Tails of more copies, or of rows so much longer than the fill, have never paid the work of filling them anew.
    private const int MostInTails = 1000;
    private const double WorthTails = 1.1;

    private readonly SplitMix64 chance = new(table.Task.Seed);
    private readonly long placesToLookFor = (long)table.Task.Effort * BottomLeftFill.PlacesPerUnit;
    private long placesLookedFor;
    private int fillsTried;
    private readonly long widest = table.Outlines.Select(outline => outline.Width).DefaultIfEmpty(0).Max();
    private int[] bestOrder = [];
    private PlaceRule bestRule;

    // A lay beyond the grid's reach could not be proved: it is given up on the way.
    private long bestRight = (long)(Grid.LargestMillimetres * Grid.StepsPerMillimetre) + 1;

    /// <summary>The shortest lay so far; empty while there is none that the grid reaches.</summary>
    public IReadOnlyList<Placed> Best { get; private set; } = [];

    /// <summary>Fills in the first order, whatever the effort.</summary>
    /// <exception cref="OperationCanceledException">Cancelled before the lay was full.</exception>
    public void RunFirst() => Try(FirstOrders().First(), Rules[0]);

    /// <summary>Searches from scratch, or on from the first order.</summary>
    /// <exception cref="OperationCanceledException">Cancelled before the first lay was full.</exception>
    public void Run()
    {
        var rules = table.Outlines.Length > table.ByItem.Length ? Rules : Rules[..1];
        foreach (var (order, rule) in FirstOrders().SelectMany(order => rules.Select(rule => (order, rule))).Skip(fillsTried))
        {
            if (IsOver())
            {
                return;
            }

            Try(order, rule);
        }

        while (!IsOver() && bestOrder.Length > 1)
        {
            Try(Changed(bestOrder), chance.Below(4) == 0 ? rules[chance.Below(rules.Length)] : bestRule);
        }
    }

    /// <summary>Takes the tail off a lay in several places and fills it again; the shortest is kept among the search's own.</summary>
    /// <param name="lay">The lay with a tail.</param>
    /// <param name="filled">Right end of a lay of the same copies made otherwise, steps; far shorter ones are out of reach.</param>
    public void FillTails(IReadOnlyList<Placed> lay, long filled)
    {
        var right = lay.Max(p => p.Right);
        if (lay.Count > MostInTails || right > filled * WorthTails)
        {
            return;
        }

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

    private bool IsOver() => (cancel.IsCancellationRequested && Best.Count > 0) || (placesLookedFor >= placesToLookFor && (Best.Count > 0 || fillsTried > 0));

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
        fillsTried++;
        if (Keep(Filled([], order, rule, bestRight)))
        {
            (bestOrder, bestRule) = (order, rule);
        }
    }

    private bool Keep(Filling? filled)
    {
        if (filled is null || filled.Right >= bestRight)
        {
            return false;
        }

        (Best, bestRight) = (filled.Placed, filled.Right);
        return true;
    }

    /// <summary>Fills a strip, many copies in several goes; null as soon as it gets no shorter than a limit.</summary>
    private Filling? Filled(IReadOnlyList<Placed> kept, int[] order, PlaceRule rule, long limit)
    {
        List<Placed> lay = [.. table.Fixed, .. kept];
        var (right, floor) = (lay.Select(place => place.Right).DefaultIfEmpty(0).Max(), 0L);
        foreach (var go in Goes(order))
        {
            var fill = new StripFill(table, rule, floor);
            foreach (var place in lay.Skip(table.Fixed.Length).Where(place => place.Right + table.Spacing > floor))
            {
                fill.Put(place);
            }

            var before = fill.Placed.Count;
            if (!TryFill(fill, go, limit))
            {
                return null;
            }

            lay.AddRange(fill.Placed.Skip(before));
            right = Math.Max(right, fill.Right);
            floor = Math.Max(0, right - (2 * widest));
        }

        Report(right);
        return new Filling(lay, right);
    }

    /// <summary>Fills in copies; false as soon as the strip gets no shorter than a limit, or on cancel.</summary>
    private bool TryFill(StripFill fill, IEnumerable<int> copies, long limit)
    {
        foreach (var item in copies)
        {
            if (cancel.IsCancellationRequested)
            {
                return Best.Count > 0 ? false : throw new OperationCanceledException(cancel);
            }

            fill.Add(item);
            placesLookedFor += table.ByItem[item].Length;
            if (fill.Right >= limit)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>An order dealt out into goes of as many copies, each with its share of the first and of the last.</summary>
    private IEnumerable<IEnumerable<int>> Goes(int[] order)
    {
        var most = Math.Clamp(OutlinesByCopiesInAGo / table.Outlines.Length, LeastInAGo, MostInAGo);
        var goes = ((order.Length - 1) / most) + 1;
        return Enumerable.Range(0, goes).Select(go => order.Where((_, i) => i % goes == go));
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

    /// <summary>A full lay and its right end, steps.</summary>
    private sealed record Filling(IReadOnlyList<Placed> Placed, long Right);
}
