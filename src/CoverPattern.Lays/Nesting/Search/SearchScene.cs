using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>What all workers share and none changes: shapes, pair tables, settings.</summary>
internal sealed class SearchScene
{
    private readonly Dictionary<NestingPlacement, PreparedShape> _startShapes;
    private readonly NestingTask _task;
    private readonly ImmutableArray<List<PoleFinder.Pole>?> _poles;

    public SearchScene(NestingTask task, SearchSettings settings, SearchOptions options)
    {
        Settings = settings;
        IsRound = options.IsRound;
        Width = checked((int)Math.Floor(task.Width * Grid.StepsPerMillimetre));
        Pieces = task.Items.Sum(item => item.Quantity);
        var items = task.Items.Length;
        _task = task;
        _poles = [.. task.Items.Select((item, i) => MayTurn(item) && settings.FirstTurn > 0 ? ShapePreparer.Poles(task, i) : null)];
        task = task with { Items = [.. task.Items, .. task.Flaws.Select(flaw => flaw.ToItem())] };
        Shapes = [.. ShapePreparer.Prepare(task).Select((turns, item) => Fitting(task, item, turns))];
        _startShapes = StartShapes(task, options.Start);
        var highest = Shapes.SelectMany(turns => turns).Concat(_startShapes.Values).Max(shape => shape.Index);
        WidestBox = Shapes.SelectMany(turns => turns).Concat(_startShapes.Values).Max(shape => MayTurn(shape) ? (int)shape.Diameter + 2 : shape.Box.Width);
        Tables = new PairTables(highest + 1, settings.Tables);
        var copies = ImmutableArray.CreateBuilder<int>();
        for (var item = 0; item < task.Items.Length; item++)
        {
            for (var k = 0; k < task.Items[item].Quantity; k++)
            {
                copies.Add(item);
            }
        }

        Copies = copies.ToImmutable();
        CopiesOf = [.. task.Items.Select((item, k) => (task.Items.Take(k).Sum(other => other.Quantity), item.Quantity))];
        Start = options.Start is { } start ? StartLayReader.Read(this, start, options.Locked) : null;
        Locked = Start?.Locked ?? [.. Copies.Select((_, copy) => copy >= Pieces)];
        ShortestLength = ShortestPossible(items);
        Bulky = MoreBulkyHalf();
    }

    public SearchSettings Settings { get; }

    /// <summary>Whether the strip's ends meet.</summary>
    public bool IsRound { get; }

    /// <summary>Prepared shapes by item.</summary>
    public ImmutableArray<ImmutableArray<PreparedShape>> Shapes { get; }

    public PairTables Tables { get; }

    /// <summary>Width of the strip, whole steps.</summary>
    public int Width { get; }

    /// <summary>Number of copies that are pieces; those behind stand for the flawed areas and never move.</summary>
    public int Pieces { get; }

    /// <summary>Where the flawed areas lie.</summary>
    public IEnumerable<Spot> Flaws => Copies.Skip(Pieces).Select(item => new Spot(Shapes[item][0], 0, 0));

    /// <summary>The item of every copy, in order of item and copy.</summary>
    public ImmutableArray<int> Copies { get; }

    /// <summary>Width of the widest box of all shapes, steps; of those that are turned further on the way, in any turn.</summary>
    public int WidestBox { get; }

    /// <summary>First copy and number of copies of each item.</summary>
    public ImmutableArray<(int First, int Count)> CopiesOf { get; }

    /// <summary>The lay to start from, if any was given.</summary>
    public StartLayReader.Given? Start { get; }

    /// <summary>For each copy whether it must stay where the start lay has it.</summary>
    public ImmutableArray<bool> Locked { get; }

    /// <summary>No lay can be shorter, steps: the areas fill the width, the longest copy fits, and locked copies stay.</summary>
    public int ShortestLength { get; }

    /// <summary>The copies of the bulkier items: those that make up three quarters of the area.</summary>
    public ImmutableArray<int> Bulky { get; }

    /// <summary>The shape of a placement of the start lay, whose turn need not be one that is searched.</summary>
    public PreparedShape ShapeOf(NestingPlacement placement) => _startShapes[placement with { Shift = default }];

    /// <summary>Whether a shape may be turned a little further than it is prepared.</summary>
    public bool MayTurn(PreparedShape shape) => !shape.IsFlaw && _poles[shape.Item] is not null;

    /// <summary>A shape turned to another angle; null where the item may not lie so.</summary>
    public PreparedShape? Turned(PreparedShape shape, double degrees)
    {
        var turns = _task.Items[shape.Item].Turns;
        return turns.IsFree || TurnChoices.IsWithin(turns, degrees)
            ? ShapePreparer.Prepare(_task, new NestingPlacement(shape.Item, degrees, default, shape.Mirrored), _poles[shape.Item]!)
            : null;
    }

    private static bool MayTurn(NestingItem item) => item.Turns.IsFree || item.Turns.Within > 0;

    private Dictionary<NestingPlacement, PreparedShape> StartShapes(NestingTask task, NestingLayout? start)
    {
        var (shapes, next) = (new Dictionary<NestingPlacement, PreparedShape>(), 1 + Shapes.Max(turns => turns[^1].Index));
        foreach (var pose in start?.Placements.Select(placement => placement with { Shift = default }) ?? [])
        {
            if (!shapes.ContainsKey(pose))
            {
                shapes[pose] = Shapes[pose.Item].FirstOrDefault(shape => shape.TurnDegrees == pose.TurnDegrees && shape.Mirrored == pose.Mirrored)
                    ?? ShapePreparer.Prepare(task, pose, next++);
            }
        }

        return shapes;
    }

    private ImmutableArray<PreparedShape> Fitting(NestingTask task, int item, ImmutableArray<PreparedShape> turns)
    {
        if (turns.Any(shape => Math.Max(shape.Box.Width, shape.Box.Height) > PreparedShape.LargestSize))
        {
            throw new ArgumentException(FormattableString.Invariant($"Item {item} is larger than 32 m."), nameof(task));
        }

        if (task.Items[item].IsFlaw)
        {
            return turns;
        }

        var least = turns.Min(shape => shape.TrueBox.Height);
        return least <= Width
            ? [.. turns.Where(shape => shape.TrueBox.Height <= Width)]
            : throw new ItemTooWideException(item, least / (double)Grid.StepsPerMillimetre, task.Width);
    }

    private int ShortestPossible(int items)
    {
        var area = Copies.Take(Pieces).Sum(item => Shapes[item][0].Area);
        var longest = Shapes.Take(items).Max(turns => turns.Min(shape => IsRound ? shape.Box.Width : shape.TrueBox.Width));
        var locked = Start?.Spots.Take(Pieces).Where((_, copy) => Locked[copy]).Select(spot => spot.X + spot.Shape.TrueBox.Right).DefaultIfEmpty(0).Max() ?? 0;
        return (int)Math.Max(Math.Ceiling(area / Width), Math.Max(longest, locked));
    }

    private ImmutableArray<int> MoreBulkyHalf()
    {
        var (sum, all) = (0.0, Copies.Take(Pieces).Sum(item => Shapes[item][0].Area));
        var bulky = ImmutableArray.CreateBuilder<int>();
        foreach (var copy in Enumerable.Range(0, Copies.Length).Where(i => !Locked[i]).OrderByDescending(i => Shapes[Copies[i]][0].Bulk).ThenBy(i => i))
        {
            bulky.Add(copy);
            sum += Shapes[Copies[copy]][0].Area;
            if (sum >= 0.75 * all)
            {
                break;
            }
        }

        return bulky.ToImmutable();
    }
}
