using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>What all placing methods need of a task: outlines in every turn they may take, and what keeps two of them apart.</summary>
internal sealed class OutlineTable
{
    // Thousands of unlike outlines have more pairs than memory: some 200 MB of them are held, and all are made anew from then on.
    private const int MostKeepOuts = 400_000;

    private readonly Dictionary<(int Fixed, int Moving), KeepOut[]> keepOuts = [];
    private readonly Dictionary<(int Item, long Height), RowStyle?> styles = [];
    private readonly Dictionary<int, int> fixedCopies;
    private int keepOutsHeld;

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
        Flaws = [.. task.Flaws.Select((flaw, k) => OfFlaw(flaw, k))];
        Fixed = OfFixed(outlines.Count + task.Flaws.Length);
        fixedCopies = Fixed.CountBy(placed => placed.Outline.Item).ToDictionary();
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

    /// <summary>Where the flawed areas lie.</summary>
    public ImmutableArray<Placed> Flaws { get; }

    /// <summary>Copies that stay where they lie.</summary>
    public ImmutableArray<Placed> Fixed { get; }

    /// <summary>Copies in all.</summary>
    public int Copies => Task.Items.Sum(item => item.Quantity);

    /// <summary>Copies of an item that are to be placed, those that stay where they lie not counted.</summary>
    public int CopiesToLay(int item) => Task.Items[item].Quantity - fixedCopies.GetValueOrDefault(item);

    /// <summary>Whether a piece lies on no flawed area that it does not bear.</summary>
    public bool IsClear(Placed piece) => Flaws.All(flaw => Array.TrueForAll(
        Between(flaw.Outline, piece.Outline),
        keepOut => !keepOut.TrySpan(piece.Y - flaw.Y, out var from, out var to) || piece.X - flaw.X <= from || piece.X - flaw.X >= to));

    /// <summary>Shifts of the moving outline's box against the fixed one's that are forbidden.</summary>
    public KeepOut[] Between(TurnedOutline still, TurnedOutline moving)
    {
        var key = (still.Index, moving.Index);
        if (!keepOuts.TryGetValue(key, out var found))
        {
            var spacing = still.Item < 0 ? 0 : Spacing;
            found = still.Item < 0 && Task.Items[moving.Item].Grade >= Task.Flaws[-1 - still.Item].LeastGrade
                ? []
                : [.. still.Parts.SelectMany(part => moving.Parts.Select(other => Of(part, other, spacing)))];
            if (keepOutsHeld > MostKeepOuts)
            {
                keepOuts.Clear();
                keepOutsHeld = 0;
            }

            keepOuts.Add(key, found);
            keepOutsHeld += found.Length;
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

    private Placed OfFlaw(FlawedArea flaw, int number)
    {
        var outline = new TurnedOutline(Outlines.Length + number, new NestingPlacement(-1 - number, 0, default), flaw.ToItem());
        return new Placed(outline, outline.Low.X, outline.Low.Y);
    }

    /// <summary>Where the copies lie that stay; copies of one pose share an outline, so that their keep-outs are made once.</summary>
    private ImmutableArray<Placed> OfFixed(int firstIndex)
    {
        var poses = new Dictionary<NestingPlacement, TurnedOutline>();
        var placed = ImmutableArray.CreateBuilder<Placed>(Task.Fixed.Length);
        foreach (var placement in Task.Fixed)
        {
            var pose = placement with { Shift = default };
            if (!poses.TryGetValue(pose, out var outline))
            {
                outline = new TurnedOutline(firstIndex + poses.Count, pose, Task.Items[pose.Item]);
                poses.Add(pose, outline);
            }

            var shift = Grid.ToSteps(placement.Shift);
            placed.Add(new Placed(outline, shift.X + outline.Low.X, shift.Y + outline.Low.Y));
        }

        return placed.MoveToImmutable();
    }

    private static KeepOut Of(ImmutableArray<GridPoint> still, ImmutableArray<GridPoint> moving, long spacing)
    {
        var sum = ConvexRings.Sum(still, ConvexRings.HalfTurned(moving));
        return new KeepOut(spacing > 0 ? ConvexRings.Grow(sum, spacing) : sum);
    }

    private ImmutableArray<TurnedOutline> Turned(int item, ImmutableArray<TurnedOutline>.Builder outlines)
    {
        var fitting = ImmutableArray.CreateBuilder<TurnedOutline>();
        var least = long.MaxValue;
        foreach (var turn in TurnChoices.Of(Task.Items[item]))
        {
            var outline = new TurnedOutline(outlines.Count, new NestingPlacement(item, turn, default), Task.Items[item]);
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
        return start >= 0 && left.Holes.IsEmpty && Enumerable.Range(0, left.Ring.Length).All(i => left.Ring[i] == right.Ring[(start + i) % right.Ring.Length]);
    }
}
