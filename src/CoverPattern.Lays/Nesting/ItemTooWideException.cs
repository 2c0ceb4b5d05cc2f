using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Nesting;

/// <summary>An item is wider than the strip in every turn it may take.</summary>
public sealed class ItemTooWideException : WorkException
{
    /// <param name="item">Index into the task's items.</param>
    /// <param name="leastWidth">Least width the item takes across the strip, millimetres.</param>
    /// <param name="stripWidth">Width of the strip, millimetres.</param>
    public ItemTooWideException(int item, double leastWidth, double stripWidth)
        : base(
            FormattableString.Invariant($"item {item}"),
            FormattableString.Invariant($"Item {item} needs {leastWidth:F1} mm across the strip; the strip has {stripWidth:F1} mm. Take a wider strip or allow other turns."))
    {
        Item = item;
        LeastWidth = leastWidth;
    }

    /// <summary>Index into the task's items.</summary>
    public int Item { get; }

    /// <summary>Least width the item takes across the strip, millimetres.</summary>
    public double LeastWidth { get; }
}
