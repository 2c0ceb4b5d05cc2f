using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>Rows along the strip, neighbours turned half round: the closed form for triangles, computed for any outline.</summary>
/// <remarks>
/// A triangle and its half turn make a parallelogram, so a row of triangles with base a, base angles b and c and
/// spacing s has the pair pitch a + s / sin b + s / sin c, and rows of height h the pitch h + s (own derivation). Here
/// the least pitch comes from the keep-outs, so it is right for any outline and for unlike neighbours. Width that no
/// row can use is given to the rows: the half-turned copies hang from the upper edge and move closer together. Every
/// way to part the width is tried, in one block or in two blocks one behind the other; each copy goes to the row
/// that is then shortest.
/// </remarks>
public static class RowFill
{
    // Two blocks are tried for few kinds and the best ways to part the width only; own choice for time.
    private const int MostItemsInTwoBlocks = 6;
    private const int MostSplitsInTwoBlocks = 24;
    private const int MostCopiesInTwoBlocks = 1000;

    /// <summary>Fills the strip.</summary>
    /// <inheritdoc cref="Nester.Nest" path="/exception"/>
    public static NestingLayout Fill(NestingTask task) => Placed.ToLayout(Fill(new OutlineTable(task), CancellationToken.None), "rows");

    internal static List<Placed> Fill(OutlineTable table, CancellationToken cancel)
    {
        if (table.Copies == 0)
        {
            return [];
        }

        var orders = Orders(table).ToArray();
        var blocks = orders.SelectMany(order => Blocks(table, order, cancel)).ToList();
        var best = blocks.MinBy(block => block.Length)!.Placed;
        if (table.ByItem.Length > MostItemsInTwoBlocks || table.Copies > MostCopiesInTwoBlocks)
        {
            return best;
        }

        foreach (var order in orders)
        {
            best = ShorterInTwoBlocks(table, order, best, cancel);
        }

        return best;
    }

    private static IEnumerable<List<(int Item, int Copies)>> Orders(OutlineTable table)
    {
        var items = Enumerable.Range(0, table.ByItem.Length).Select(item => (Item: item, Copies: table.Task.Items[item].Quantity)).ToList();
        yield return [.. items.OrderByDescending(item => table.ByItem[item.Item].Min(outline => outline.Height))];
        yield return [.. items.OrderByDescending(item => Rings.SignedArea(table.Task.Items[item.Item].Outline))];
    }

    private static IEnumerable<(List<Placed> Placed, long Length)> Blocks(
        OutlineTable table, List<(int Item, int Copies)> order, CancellationToken cancel)
    {
        foreach (var split in RowSplits.Of(table, [.. order.Select(item => item.Item)]))
        {
            cancel.ThrowIfCancellationRequested();
            var block = new RowBlock(table, split);
            foreach (var (item, copies) in order)
            {
                block.Add(item, copies);
            }

            yield return (block.Placed(0), block.End);
        }
    }

    private static List<Placed> ShorterInTwoBlocks(
        OutlineTable table, List<(int Item, int Copies)> order, List<Placed> best, CancellationToken cancel)
    {
        var length = best.Max(p => p.Right);
        for (var kinds = 1; kinds < order.Count; kinds++)
        {
            var firsts = Shortest(RowSplits.Of(table, [.. order.Take(kinds).Select(item => item.Item)]), table, order[..kinds]);
            foreach (var first in firsts)
            {
                cancel.ThrowIfCancellationRequested();
                var block = new RowBlock(table, first);
                order.Take(kinds).ToList().ForEach(item => block.Add(item.Item, item.Copies));
                var rest = order.Skip(kinds).Select(item => (item.Item, Copies: item.Copies - block.AddWithin(item.Item, item.Copies, block.End)))
                    .Where(item => item.Copies > 0)
                    .ToList();
                var second = rest.Count > 0 && block.End < length ? Blocks(table, rest, cancel).MinBy(other => other.Length) : ([], 0);
                if (block.End < length && block.End + table.Spacing + second.Length < length)
                {
                    var start = block.End + table.Spacing;
                    best = [.. block.Placed(0), .. second.Placed.Select(p => p with { X = p.X + start })];
                    length = best.Max(p => p.Right);
                }
            }
        }

        return best;
    }

    private static IEnumerable<ImmutableArray<long>> Shortest(
        ImmutableArray<ImmutableArray<long>> splits, OutlineTable table, List<(int Item, int Copies)> order) =>
        splits.OrderBy(split =>
        {
            var block = new RowBlock(table, split);
            order.ForEach(item => block.Add(item.Item, item.Copies));
            return block.End;
        }).Take(MostSplitsInTwoBlocks);
}
