using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using System.Threading;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Pdf;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Lays.Sheets;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Prints a result in true size as PDF.</summary>
public static class PdfPlots
{
    private const string View = "True size: print at 100 %, and measure the square of 100 mm before cutting. Lays as the cloth lies, patterns seen from outside.";

    /// <summary>Each lay on one page or a page a section, each pattern on one page after a page of what nobody has confirmed, and where a paper is named both again in tiles on it.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="lays">All lays.</param>
    /// <param name="notes">What nobody has confirmed.</param>
    /// <param name="wish">Longest page and paper.</param>
    /// <param name="work">Told each file when it is begun; ends the work; silent when left out.</param>
    /// <exception cref="OperationCanceledException">The work was to end.</exception>
    public static ImmutableSortedDictionary<string, byte[]> Write(PieceSet pieces, ImmutableArray<Lay> lays, PaperNotes notes, PdfWish wish, PlotWork? work = null)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        ArgumentNullException.ThrowIfNull(wish);

        var told = work ?? PlotWork.Silent;
        var plots = new PlotSummary("pdf", View, told);
        foreach (var lay in lays)
        {
            plots.Begin(PlotNames.Of(lay) + ".pdf");
            var (name, drawing) = (PlotNames.Of(lay), LayDrawing.Draw(lay, pieces, notes));
            ImmutableArray<PdfPage> pages = [.. SectionDrawing.Of(lay, pieces, notes, wish.LongestMm).Select(part => PdfDrawing.Whole(part.Drawing))];
            plots.Add(name + ".pdf", PdfWriter.Write(name, pages), Facts(pages));
            AddTiles(plots, name, [(name, drawing)], notes, wish.Tiles, told.Cancel);
        }

        var patterns = pieces.Patterns.Select(pattern => (pattern.Id, PatternSheet.Draw(pieces with { Patterns = [pattern] }, notes, "the first page"))).ToImmutableArray();
        if (!patterns.IsEmpty)
        {
            plots.Begin("patterns.pdf");
            ImmutableArray<Drawing> sheets = [.. notes.Unconfirmed.IsEmpty ? Array.Empty<Drawing>() : [notes.Sheet()], .. patterns.Select(entry => entry.Item2)];
            ImmutableArray<PdfPage> pages = [.. sheets.Select(PdfDrawing.Whole)];
            plots.Add("patterns.pdf", PdfWriter.Write("patterns", pages), Facts(pages));
            AddTiles(plots, "patterns", patterns, notes, wish.Tiles, told.Cancel);
        }

        return plots.Files();
    }

    private static void AddTiles(PlotSummary plots, string name, ImmutableArray<(string Name, Drawing Drawing)> drawings, PaperNotes notes, TileWish? wish, CancellationToken cancel)
    {
        if (wish is null)
        {
            return;
        }

        plots.Begin(name + "-tiles.pdf");
        ImmutableArray<(string Name, Drawing Printed, TilePlan Plan)> plans =
        [
            .. drawings.Select(entry => (entry.Name, Printed: TileSheets.Printed(entry.Drawing))).Select(entry => (entry.Name, entry.Printed, TileSheets.Plan(entry.Printed, wish))),
        ];
        ImmutableArray<PdfPage> tiles = [.. TileMap.Pages(plans, wish), .. plans.SelectMany(plan => TileSheets.Pages(plan.Name, plan.Printed, plan.Plan, notes, cancel))];
        var facts = Facts(tiles);
        facts["tiles"] = JsonWords.List(plans, plan => new JsonObject
        {
            ["of"] = plan.Name,
            ["sheetWidthMm"] = JsonWords.Of(SummaryFile.Round(plan.Plan.Wish.Sheet.WidthMm)),
            ["sheetHeightMm"] = JsonWords.Of(SummaryFile.Round(plan.Plan.Wish.Sheet.HeightMm)),
            ["columns"] = plan.Plan.Columns,
            ["rows"] = plan.Plan.Rows,
            ["sheets"] = plan.Plan.Tiles.Length,
        });
        plots.Add(name + "-tiles.pdf", PdfWriter.Write(name + " in tiles", tiles), facts);
    }

    private static JsonObject Facts(ImmutableArray<PdfPage> pages) => new()
    {
        ["pages"] = pages.Length,
        ["longestPageMm"] = JsonWords.Of(SummaryFile.Round(pages.Length == 0 ? 0 : pages.Max(page => Math.Max(page.Size.WidthMm, page.Size.HeightMm)))),
        ["userUnit"] = pages.Length == 0 ? 1 : pages.Max(page => page.UserUnit),
    };
}
