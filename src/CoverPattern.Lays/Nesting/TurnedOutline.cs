using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>An item's outline in one of its turns, moved so that its upright box begins at the origin.</summary>
internal sealed class TurnedOutline
{
    // More hollows than this make the tables of keep-outs large for little cloth; own choice.
    private const int MostHollows = 8;

    private readonly NestingPlacement pose;

    /// <param name="index">Place in the list of all turned outlines of the task.</param>
    /// <param name="pose">Item, turn and face; no shift.</param>
    /// <param name="item">Outline and holes as given.</param>
    public TurnedOutline(int index, NestingPlacement pose, NestingItem item)
    {
        Index = index;
        this.pose = pose;
        var turned = Rings.ToSteps(pose.Apply(item.Outline));
        Low = new GridPoint(turned.Min(p => p.X), turned.Min(p => p.Y));
        Ring = Moved(turned);
        Holes = [.. item.Holes.Select(hole => Moved(Rings.ToSteps(pose.Apply(hole))))];
        Width = Ring.Max(p => p.X);
        Height = Ring.Max(p => p.Y);
        Parts = ConvexParts.Cover(Ring, Holes, MostHollows);
    }

    public int Index { get; }

    /// <summary>Index into the task's items; -1 and below for the flawed areas.</summary>
    public int Item => pose.Item;

    public double TurnDegrees => pose.TurnDegrees;

    /// <summary>Low corner of the box of the turned outline before it was moved to the origin, steps.</summary>
    public GridPoint Low { get; }

    /// <summary>Corners in steps.</summary>
    public ImmutableArray<GridPoint> Ring { get; }

    /// <summary>Holes in steps, clockwise.</summary>
    public ImmutableArray<ImmutableArray<GridPoint>> Holes { get; }

    /// <summary>Length along the strip, steps.</summary>
    public long Width { get; }

    /// <summary>Length across the strip, steps.</summary>
    public long Height { get; }

    /// <summary>Convex rings that cover the outline.</summary>
    public ImmutableArray<ImmutableArray<GridPoint>> Parts { get; }

    /// <summary>The placement that brings the box's low corner to a place.</summary>
    public NestingPlacement At(long x, long y) => pose with { Shift = new GridPoint(x - Low.X, y - Low.Y).ToPoint() };

    private ImmutableArray<GridPoint> Moved(ImmutableArray<GridPoint> ring) => [.. ring.Select(p => new GridPoint(p.X - Low.X, p.Y - Low.Y))];
}
