using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Pdf;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Plots;

/// <summary>Small pictures that tell where each sheet of a large drawing lies.</summary>
internal static class TileMap
{
    private const double TextHeight = 3.2;

    // Columns on one map: more could not be read.
    private const int MostColumns = 24;
    private const double HeadHeight = 16;
    private static readonly PdfPen Thin = new("#404040", 0.1);
    private static readonly PdfPen Joint = new("#c00000", 0.2);

    /// <summary>Pages of maps, one or six on each.</summary>
    /// <param name="plans">Drawings with their names and plans, at least one.</param>
    /// <param name="wish">The paper.</param>
    internal static IEnumerable<PdfPage> Pages(ImmutableArray<(string Name, Drawing Printed, TilePlan Plan)> plans, TileWish wish)
    {
        // One drawing gets a page to itself, a long one several; more drawings share pages, two by three.
        var (across, down) = plans.Length == 1 ? (1, 1) : (2, 3);
        var stretches = plans.SelectMany(entry => Stretches(entry.Plan).Select(columns => (entry, columns)));
        var sheet = plans.Length == 1 ? plans[0].Plan.Wish.Sheet : wish.Sheet;
        var cell = new Point2((sheet.WidthMm - (2 * wish.MarginMm)) / across, (sheet.HeightMm - (2 * wish.MarginMm)) / down);
        foreach (var part in stretches.Chunk(across * down))
        {
            var page = new PdfPage(sheet);
            foreach (var ((entry, columns), i) in part.Select((stretch, i) => (stretch, i)))
            {
                var corner = new Point2(wish.MarginMm + (i % across * cell.X), wish.MarginMm + ((down - 1 - (i / across)) * cell.Y));
                Draw(page, entry, columns, new Box2(corner, corner + cell));
            }

            yield return page;
        }
    }

    /// <summary>First and last columns of the parts of a plan that each have a map.</summary>
    private static IEnumerable<(int First, int Last)> Stretches(TilePlan plan)
    {
        for (var first = 0; first < plan.Columns; first += MostColumns)
        {
            yield return (first, Math.Min(first + MostColumns, plan.Columns) - 1);
        }
    }

    private static void Draw(PdfPage page, (string Name, Drawing Printed, TilePlan Plan) entry, (int First, int Last) columns, Box2 cell)
    {
        var plan = entry.Plan;
        var stretch = plan.Columns > MostColumns ? FormattableString.Invariant($", columns {columns.First + 1} to {columns.Last + 1}") : string.Empty;
        var words = FormattableString.Invariant($"{entry.Name}: {plan.Tiles.Length} sheets, {(plan.Columns * plan.Rows) - plan.Tiles.Length} blank ones left out{stretch}");
        page.Text(Words(words, new Point2(cell.Low.X, cell.High.Y - TextHeight), TextHeight, TextAnchor.Start), default);
        page.Text(Words("Lay the crosses of neighbours on each other.", new Point2(cell.Low.X, cell.High.Y - (2.5 * TextHeight)), TextHeight, TextAnchor.Start), default);
        var whole = new Box2(plan.Area(columns.First, 0).Low, plan.Area(columns.Last, plan.Rows - 1).High);
        var scale = Math.Min((cell.Width - 4) / whole.Width, (cell.Height - HeadHeight - 4) / whole.Height);
        Point2 Place(Point2 point) => cell.Low + new Point2(2, 2) + (scale * (point - whole.Low));
        foreach (var line in entry.Printed.LinesOnSheet().Where(line => line.Layer.Use == LayerUse.Cut).SelectMany(line => BoxClip.Within(whole, PdfDrawing.Open(line))))
        {
            page.Line([.. line.Select(Place)], isClosed: false, Thin);
        }

        foreach (var tile in plan.Tiles.Where(tile => tile.Column >= columns.First && tile.Column <= columns.Last))
        {
            var (low, high) = (Place(tile.Area.Low), Place(tile.Area.Low + plan.Step));
            page.Line([low, new(high.X, low.Y), high, new(low.X, high.Y)], isClosed: true, Joint);
            var height = Math.Min(TextHeight, (high.Y - low.Y) / 2);
            page.Text(Words(tile.Number.ToString(CultureInfo.InvariantCulture), Point2.Between(low, high, 0.5), height, TextAnchor.Middle), default);
        }
    }

    private static DrawnText Words(string text, Point2 at, double height, TextAnchor anchor) => new(DrawingLayers.Title, text, at, height, 0, anchor);
}
