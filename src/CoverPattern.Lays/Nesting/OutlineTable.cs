using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>What all placing methods need of a task: outlines in every turn they may take, and what keeps two of them apart.</summary>
internal sealed class OutlineTable
{
    private readonly Dictionary<(int Fixed, int Moving), KeepOut[]> keepOuts = [];
    private readonly Dictionary<(int Item, long Height), RowStyle?> styles = [];

    /// <exception cref="ArgumentException">The task is not well formed: see <see cref="Nester"/>.</exception>
    /// <exception cref="ItemTooWideException">An item is wider than the strip in every allowed turn.</exception>
    public OutlineTable(NestingTask task)
    {
        NestingTasks.Require(task);
        Task = task;
        Width = (long)Math.Floor(task.Width * Grid.StepsPerMillimetre);
        Spacing = (long)Math.Ceiling(task.Spacing * Grid.StepsPerMillimetre);
        var outlines = ImmutableArray.CreateBuilder<TurnedOutline>();
        ByItem = [.. task.Items.Select((_, item) => Turned(item, outlines))];
        Outlines = outlines.ToImmutable();
    }

    public NestingTask Task { get; }

    /// <summary>Width of the strip, steps.</summary>
    public long Width { get; }

    /// <summary>Spacing, steps.</summary>
    public long Spacing { get; }

    /// <summary>All outlines in all turns.</summary>
    public ImmutableArray<TurnedOutline> Outlines { get; }

    /// <summary>For each item its outlines in the turns that fit the strip, at least one.</summary>
    public ImmutableArray<ImmutableArray<TurnedOutline>> ByItem { get; }

    /// <summary>Copies in all.</summary>
    public int Copies => Task.Items.Sum(item => item.Quantity);

    /// <summary>Shifts of the moving outline's box against the fixed one's that are forbidden.</summary>
    public KeepOut[] Between(TurnedOutline still, TurnedOutline moving)
    {
        var key = (still.Index, moving.Index);
        if (!keepOuts.TryGetValue(key, out var found))
        {
            found = [.. still.Parts.SelectMany(part => moving.Parts.Select(other => Of(part, other)))];
            keepOuts.Add(key, found);
        }

        return found;
    }

    /// <summary>The densest way to set an item in a row of a height; null when it does not fit.</summary>
    public RowStyle? StyleIn(int item, long height)
    {
        if (!styles.TryGetValue((item, height), out var style))
        {
            style = RowStyle.Densest(this, item, height);
            styles.Add((item, height), style);
        }

        return style;
    }

    private KeepOut Of(ImmutableArray<GridPoint> still, ImmutableArray<GridPoint> moving)
    {
        var sum = ConvexRings.Sum(still, ConvexRings.HalfTurned(moving));
        return new KeepOut(Spacing > 0 ? ConvexRings.Grow(sum, Spacing) : sum);
    }

    private ImmutableArray<TurnedOutline> Turned(int item, ImmutableArray<TurnedOutline>.Builder outlines)
    {
        var ring = Task.Items[item].Outline;
        var fitting = ImmutableArray.CreateBuilder<TurnedOutline>();
        var least = long.MaxValue;
        foreach (var turn in TurnChoices.Of(Task.Items[item]))
        {
            var outline = new TurnedOutline(outlines.Count, item, turn, ring);
            least = Math.Min(least, outline.Height);
            if (outline.Height <= Width && !fitting.Any(other => IsSame(other, outline)))
            {
                outlines.Add(outline);
                fitting.Add(outline);
            }
        }

        return fitting.Count > 0
            ? fitting.ToImmutable()
            : throw new ItemTooWideException(item, least / (double)Grid.StepsPerMillimetre, Task.Width);
    }

    private static bool IsSame(TurnedOutline left, TurnedOutline right)
    {
        var start = right.Ring.IndexOf(left.Ring[0]);
        return start >= 0 && Enumerable.Range(0, left.Ring.Length).All(i => left.Ring[i] == right.Ring[(start + i) % right.Ring.Length]);
    }
}
