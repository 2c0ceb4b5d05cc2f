using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>An item's outline in one of its turns, moved so that its upright box begins at the origin; holes are taken as solid.</summary>
internal sealed class TurnedOutline
{
    // More hollows than this make the tables of keep-outs large for little cloth; own choice.
    private const int MostHollows = 8;

    /// <param name="index">Place in the list of all turned outlines of the task.</param>
    /// <param name="item">Index into the task's items.</param>
    /// <param name="turnDegrees">The turn.</param>
    /// <param name="ring">Outline as given.</param>
    public TurnedOutline(int index, int item, double turnDegrees, ImmutableArray<Point2> ring)
    {
        Index = index;
        Item = item;
        TurnDegrees = turnDegrees;
        var turned = Rings.ToSteps(new NestingPlacement(item, turnDegrees, default).Apply(ring));
        Low = new GridPoint(turned.Min(p => p.X), turned.Min(p => p.Y));
        Ring = [.. turned.Select(p => new GridPoint(p.X - Low.X, p.Y - Low.Y))];
        Width = Ring.Max(p => p.X);
        Height = Ring.Max(p => p.Y);
        Parts = ConvexParts.Cover(Ring, MostHollows);
    }

    public int Index { get; }

    public int Item { get; }

    public double TurnDegrees { get; }

    /// <summary>Low corner of the box of the turned outline before it was moved to the origin, steps.</summary>
    public GridPoint Low { get; }

    /// <summary>Corners in steps.</summary>
    public ImmutableArray<GridPoint> Ring { get; }

    /// <summary>Length along the strip, steps.</summary>
    public long Width { get; }

    /// <summary>Length across the strip, steps.</summary>
    public long Height { get; }

    /// <summary>Convex rings that cover the outline.</summary>
    public ImmutableArray<ImmutableArray<GridPoint>> Parts { get; }

    /// <summary>The placement that brings the box's low corner to a place.</summary>
    public NestingPlacement At(long x, long y) => new(Item, TurnDegrees, new GridPoint(x - Low.X, y - Low.Y).ToPoint());
}
