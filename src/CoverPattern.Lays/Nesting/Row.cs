using System;
using System.Collections.Generic;

namespace CoverPattern.Lays.Nesting;

/// <summary>A band along the strip in which outlines stand side by side, each as close to those before it as the spacing allows.</summary>
/// <param name="table">Outlines and keep-outs.</param>
/// <param name="y">Lower edge, steps across the strip.</param>
/// <param name="height">Height, steps.</param>
internal sealed class Row(OutlineTable table, long y, long height)
{
    private readonly List<Placed> placed = [];
    private readonly List<long> rightmost = [];
    private int lastItem = -1;
    private bool isOddNext;

    public long Y { get; } = y;

    public long Height { get; } = height;

    public IReadOnlyList<Placed> Placed => placed;

    /// <summary>Right end of the row, steps; 0 while it is empty.</summary>
    public long End => rightmost.Count > 0 ? rightmost[^1] : 0;

    /// <summary>Where the next copy of an item would stand; the first of its kind begins whichever way ends sooner.</summary>
    public (Placed Place, bool IsOdd) Next(RowStyle style)
    {
        var (even, odd) = (Next(style, isOdd: false), Next(style, isOdd: true));
        var isOdd = style.Even.Item == lastItem ? isOddNext : odd.Right < even.Right;
        return (isOdd ? odd : even, isOdd);
    }

    /// <summary>Where a copy would stand as even or odd one.</summary>
    public Placed Next(RowStyle style, bool isOdd)
    {
        var outline = isOdd ? style.Odd : style.Even;
        var place = new Placed(outline, 0, isOdd && style.IsOddHanging ? Y + Height - outline.Height : Y);
        return place with { X = LeastX(place) };
    }

    /// <summary>Takes a place that was offered.</summary>
    public void Add(Placed place, bool isOdd)
    {
        placed.Add(place);
        rightmost.Add(Math.Max(End, place.Right));
        (lastItem, isOddNext) = (place.Outline.Item, !isOdd);
    }

    private long LeastX(Placed place)
    {
        var x = 0L;
        for (var i = placed.Count - 1; i >= 0 && rightmost[i] + table.Spacing > x; i--)
        {
            foreach (var keepOut in table.Between(placed[i].Outline, place.Outline))
            {
                if (keepOut.TrySpan(place.Y - placed[i].Y, out _, out var to))
                {
                    x = Math.Max(x, to + placed[i].X);
                }
            }
        }

        return x;
    }
}
