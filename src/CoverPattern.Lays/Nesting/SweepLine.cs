using System.Collections.Generic;

namespace CoverPattern.Lays.Nesting;

/// <summary>One height across the strip, and the places along it that an outline may not take.</summary>
/// <param name="y">Steps across the strip.</param>
/// <param name="floor">No place further left is looked for, steps.</param>
internal sealed class SweepLine(long y, long floor)
{
    // Disjoint and rising; two may touch, and the point where they do is free.
    private readonly List<(long From, long To)> spans = [];

    public long Y { get; } = y;

    /// <summary>How many of the placed outlines the spans already know of.</summary>
    public int Seen { get; set; }

    /// <summary>Marks all places strictly between two as taken.</summary>
    public void Block(long from, long to)
    {
        if (to <= floor)
        {
            return;
        }

        var first = FirstEndingAfter(from);
        var last = first;
        while (last < spans.Count && spans[last].From < to)
        {
            from = long.Min(from, spans[last].From);
            to = long.Max(to, spans[last].To);
            last++;
        }

        if (last > first)
        {
            spans[first] = (from, to);
            spans.RemoveRange(first + 1, last - first - 1);
        }
        else
        {
            spans.Insert(first, (from, to));
        }
    }

    /// <summary>The least free place, no less than the floor.</summary>
    public long FirstFree()
    {
        var x = floor;
        foreach (var (from, to) in spans)
        {
            if (from >= x)
            {
                return x;
            }

            x = to > x ? to : x;
        }

        return x;
    }

    private int FirstEndingAfter(long from)
    {
        var (low, high) = (0, spans.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = spans[middle].To <= from ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
