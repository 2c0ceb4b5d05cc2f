using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Sheets;

/// <summary>How a large drawing is parted among sheets.</summary>
/// <param name="Wish">Margin, overlap, and the sheet the way up it is used.</param>
/// <param name="Origin">Lower left corner of what the tile of column 0 and row 0 shows, millimetres.</param>
/// <param name="Columns">Columns of tiles, blank ones counted.</param>
/// <param name="Rows">Rows of tiles, blank ones counted.</param>
/// <param name="Tiles">Tiles on which something is drawn, by number.</param>
public sealed record TilePlan(TileWish Wish, Point2 Origin, int Columns, int Rows, ImmutableArray<Tile> Tiles)
{
    /// <summary>How far the next tile begins to the right and above, millimetres.</summary>
    public Point2 Step => Shown - new Point2(Wish.OverlapMm, Wish.OverlapMm);

    /// <summary>Width and height of what a tile shows, millimetres.</summary>
    public Point2 Shown => new Point2(Wish.Sheet.WidthMm, Wish.Sheet.HeightMm) - (2 * new Point2(Wish.MarginMm, Wish.MarginMm));

    /// <summary>What the tile of a column and row shows.</summary>
    public Box2 Area(int column, int row)
    {
        var low = Origin + new Point2(column * Step.X, row * Step.Y);
        return new Box2(low, low + Shown);
    }

    /// <summary>The tile of a column and row; null when it is blank or outside.</summary>
    public Tile? At(int column, int row) => Tiles.FirstOrDefault(tile => tile.Column == column && tile.Row == row);
}
