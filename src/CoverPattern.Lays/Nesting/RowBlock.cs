using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Lays.Nesting;

/// <summary>Rows side by side across the strip.</summary>
internal sealed class RowBlock
{
    private readonly OutlineTable table;
    private readonly List<Row> rows = [];

    /// <param name="table">Outlines.</param>
    /// <param name="heights">Heights of the rows, lowest row first, steps; with the spacing between they fit the strip.</param>
    public RowBlock(OutlineTable table, ImmutableArray<long> heights)
    {
        this.table = table;
        var y = 0L;
        foreach (var height in heights)
        {
            rows.Add(new Row(table, y, height));
            y += height + table.Spacing;
        }
    }

    /// <summary>Right end of the longest row, steps.</summary>
    public long End => rows.Max(row => row.End);

    /// <summary>Sets copies of an item, each into the row that is shortest with it.</summary>
    public void Add(int item, int copies) => AddWithin(item, copies, long.MaxValue);

    /// <summary>Sets copies of an item as long as no row gets longer than a limit.</summary>
    /// <returns>How many were set.</returns>
    public int AddWithin(int item, int copies, long limit)
    {
        var styles = rows.Select(row => table.StyleIn(item, row.Height)).ToArray();
        for (var copy = 0; copy < copies; copy++)
        {
            var next = -1;
            (Placed Place, bool IsOdd) best = default;
            for (var i = 0; i < rows.Count; i++)
            {
                if (styles[i] is { } style && rows[i].Next(style) is var offer && (next < 0 || offer.Place.Right < best.Place.Right))
                {
                    (next, best) = (i, offer);
                }
            }

            if (next < 0 || best.Place.Right > limit)
            {
                return copy;
            }

            rows[next].Add(best.Place, best.IsOdd);
        }

        return copies;
    }

    /// <summary>All that was set, shifted along the strip.</summary>
    public List<Placed> Placed(long shift) => [.. rows.SelectMany(row => row.Placed).Select(p => p with { X = p.X + shift })];
}
