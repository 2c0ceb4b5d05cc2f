using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CoverPattern.Lays.Nesting;

/// <summary>Upright boxes on shelves, highest first: the plainest way to fill a strip, and the length no other method may exceed.</summary>
/// <remarks>
/// A shelf reaches across the strip and is as long as its first item; the next item goes on the first shelf with room
/// (or on the last one only). First-fit and next-fit by decreasing height [Coffman Garey Johnson Tarjan 1980, from
/// memory]. Beside it boxes lie in rows along the strip. Every order, turn rule and way is tried; the shortest is kept.
/// </remarks>
public static class ShelfFill
{
    /// <summary>Fills the strip.</summary>
    /// <inheritdoc cref="Nester.Nest" path="/exception"/>
    public static NestingLayout Fill(NestingTask task) => Placed.ToLayout(Fill(new OutlineTable(task), CancellationToken.None), "shelves");

    internal static List<Placed> Fill(OutlineTable table, CancellationToken cancel)
    {
        var best = new List<Placed>();
        var least = long.MaxValue;
        foreach (var boxes in Orders(table))
        {
            foreach (var placed in new[] { Shelves(table, boxes, isFirstFit: true), Shelves(table, boxes, isFirstFit: false), Rows(table, boxes) })
            {
                cancel.ThrowIfCancellationRequested();
                var length = placed.Count > 0 ? placed.Max(p => p.Right) : 0;
                if (length < least)
                {
                    (best, least) = (placed, length);
                }
            }
        }

        return best;
    }

    private static IEnumerable<List<TurnedOutline>> Orders(OutlineTable table)
    {
        var rules = new Func<IEnumerable<TurnedOutline>, TurnedOutline>[]
        {
            turns => turns.First(),
            turns => turns.MinBy(turn => turn.Width)!,
            turns => turns.MinBy(turn => turn.Height)!,
        };
        foreach (var rule in rules)
        {
            var boxes = table.ByItem.SelectMany((turns, item) => Enumerable.Repeat(rule(turns), table.Task.Items[item].Quantity)).ToList();
            yield return [.. boxes.OrderByDescending(box => box.Width).ThenByDescending(box => box.Height)];
            yield return [.. boxes.OrderByDescending(box => box.Height).ThenByDescending(box => box.Width)];
        }
    }

    private static List<Placed> Shelves(OutlineTable table, List<TurnedOutline> boxes, bool isFirstFit)
    {
        var shelves = new List<(long X, long Used, long Length)>();
        var placed = new List<Placed>(boxes.Count);
        var end = 0L;
        foreach (var box in boxes)
        {
            var first = isFirstFit ? 0 : Math.Max(0, shelves.Count - 1);
            var at = shelves.FindIndex(first, shelf => shelf.Used + box.Height <= table.Width && box.Width <= shelf.Length);
            if (at < 0)
            {
                at = shelves.Count;
                shelves.Add((end, 0, box.Width));
                end += box.Width + table.Spacing;
            }

            var (x, used, length) = shelves[at];
            placed.Add(new Placed(box, x, used));
            shelves[at] = (x, used + box.Height + table.Spacing, length);
        }

        return placed;
    }

    private static List<Placed> Rows(OutlineTable table, List<TurnedOutline> boxes)
    {
        var rows = new List<(long Y, long Height, long End)>();
        var placed = new List<Placed>(boxes.Count);
        var used = 0L;
        foreach (var box in boxes)
        {
            if (used + box.Height <= table.Width)
            {
                rows.Add((used, box.Height, 0));
                used += box.Height + table.Spacing;
            }

            var at = Enumerable.Range(0, rows.Count).Where(i => box.Height <= rows[i].Height).Select(i => (rows[i].End, Row: i)).DefaultIfEmpty((0, -1)).Min().Row;
            if (at < 0)
            {
                return Shelves(table, boxes, isFirstFit: true);
            }

            placed.Add(new Placed(box, rows[at].End, rows[at].Y));
            rows[at] = rows[at] with { End = rows[at].End + box.Width + table.Spacing };
        }

        return placed;
    }
}
