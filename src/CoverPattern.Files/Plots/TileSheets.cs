using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Pdf;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Plots;

/// <summary>Prints a large drawing on many sheets that are put together along their marks.</summary>
internal static class TileSheets
{
    private const double SquareSide = 100;
    private const double TextHeight = 3;
    private const double LineStep = 5;
    private const double FromEdge = 3;
    private static readonly PdfPen Grey = new("#909090", 0.2);
    private static readonly PdfPen Joint = new("#909090", 0.2, 2, 2);
    private static readonly PdfPen Mark = new("#000000", 0.2);
    private static readonly DrawingLayer Note = DrawingLayers.Title with { Colour = "#707070" };

    /// <summary>What of a drawing is printed: all that belongs on the cloth, the roll round it, and the large names.</summary>
    internal static Drawing Printed(Drawing drawing) => drawing with
    {
        Lines = [.. drawing.Lines.Where(line => IsPrinted(line.Layer))],
        Texts = [.. drawing.Texts.Where(text => IsPrinted(text.Layer))],
    };

    /// <summary>Parts a printed drawing so that everything on the cloth is seen.</summary>
    internal static TilePlan Plan(Drawing printed, TileWish wish) =>
        TilePlanner.Plan([.. printed.LinesOnSheet().Where(line => line.Layer.Use != LayerUse.Sheet).Select(PdfDrawing.Open)], wish);

    /// <summary>One page a tile.</summary>
    /// <param name="name">What is printed, such as "lay-canvas" or "T03".</param>
    /// <param name="printed">The drawing.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="notes">What nobody has confirmed.</param>
    /// <param name="cancel">Looked at before each page.</param>
    internal static IEnumerable<PdfPage> Pages(string name, Drawing printed, TilePlan plan, PaperNotes notes, CancellationToken cancel)
    {
        var ready = new PartedDrawing(printed);
        foreach (var tile in plan.Tiles)
        {
            cancel.ThrowIfCancellationRequested();
            var page = new PdfPage(plan.Wish.Sheet);
            ready.Draw(page, tile.Area, new Point2(plan.Wish.MarginMm, plan.Wish.MarginMm));
            Marks(page, plan, tile);
            Square(page, new Point2(plan.Wish.MarginMm + plan.Wish.OverlapMm, plan.Wish.MarginMm + plan.Wish.OverlapMm), [.. Words(name, plan, tile), .. Loud(notes)]);
            yield return page;
        }
    }

    private static bool IsPrinted(DrawingLayer layer) =>
        layer.Use != LayerUse.Sheet || layer == DrawingLayers.Name || layer == DrawingLayers.Roll || layer == DrawingLayers.Usable;

    /// <summary>What a sheet says of values that nobody has confirmed; nothing when there are none.</summary>
    internal static IEnumerable<string> Loud(PaperNotes notes) =>
        notes.Unconfirmed.IsEmpty ? [] : [FormattableString.Invariant($"NOT CONFIRMED: {notes.Unconfirmed.Length} assumed values")];

    private static ImmutableArray<string> Words(string name, TilePlan plan, Tile tile) =>
    [
        name,
        FormattableString.Invariant($"Sheet {tile.Number} of {plan.Tiles.Length}"),
        FormattableString.Invariant($"row {plan.Rows - tile.Row} of {plan.Rows}, column {tile.Column + 1} of {plan.Columns}"),
        "Square: 100 mm each way",
    ];

    /// <summary>Crosses where four sheets meet, a broken line where two do, and the neighbour's number beside it.</summary>
    private static void Marks(PdfPage page, TilePlan plan, Tile tile)
    {
        var (half, margin) = (plan.Wish.OverlapMm / 2, plan.Wish.MarginMm);
        var low = new Point2(margin + half, margin + half);
        var high = new Point2(margin, margin) + plan.Shown - new Point2(half, half);
        var middle = Point2.Between(low, high, 0.5);
        var (lowRight, highLeft) = (new Point2(high.X, low.Y), new Point2(low.X, high.Y));
        foreach (var corner in new[] { low, lowRight, high, highLeft })
        {
            var arm = Math.Max(half, 2);
            page.Line([corner - new Point2(arm, 0), corner + new Point2(arm, 0)], isClosed: false, Mark);
            page.Line([corner - new Point2(0, arm), corner + new Point2(0, arm)], isClosed: false, Mark);
        }

        Neighbour(page, plan.At(tile.Column - 1, tile.Row), low, highLeft, new DrawnText(Note, string.Empty, new Point2(low.X + FromEdge, middle.Y), TextHeight, 90, TextAnchor.Middle));
        Neighbour(page, plan.At(tile.Column + 1, tile.Row), lowRight, high, new DrawnText(Note, string.Empty, new Point2(high.X - FromEdge, middle.Y), TextHeight, 90, TextAnchor.Middle));
        Neighbour(page, plan.At(tile.Column, tile.Row - 1), low, lowRight, new DrawnText(Note, string.Empty, new Point2(middle.X, low.Y + FromEdge), TextHeight, 0, TextAnchor.Middle));
        Neighbour(page, plan.At(tile.Column, tile.Row + 1), highLeft, high, new DrawnText(Note, string.Empty, new Point2(middle.X, high.Y - FromEdge), TextHeight, 0, TextAnchor.Middle));
    }

    private static void Neighbour(PdfPage page, Tile? neighbour, Point2 from, Point2 to, DrawnText words)
    {
        if (neighbour is null)
        {
            return;
        }

        page.Line([from, to], isClosed: false, Joint);
        page.Text(words with { Text = FormattableString.Invariant($"joins sheet {neighbour.Number}") }, default);
    }

    /// <summary>A square of 100 mm with words in it, so thin and grey that nobody cuts along it.</summary>
    internal static void Square(PdfPage page, Point2 low, ImmutableArray<string> words)
    {
        var (right, up) = (new Point2(SquareSide, 0), new Point2(0, SquareSide));
        page.Line([low, low + right, low + right + up, low + up], isClosed: true, Grey);
        for (var i = 0; i < words.Length; i++)
        {
            page.Text(new DrawnText(Note, words[i], low + up + new Point2(FromEdge, -LineStep * (i + 1)), TextHeight, 0, TextAnchor.Start), default);
        }
    }
}
