using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Pdf;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Lays.Models;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Plots;

/// <summary>Prints a paper model of the cover.</summary>
public static class ModelPlots
{
    private const string View = "Seen from outside: the print lies outside on the model. Print at 100 %, and measure the ruler of 100 mm.";
    private const double RulerMm = 100;
    private const double FootText = 2.6;
    private const double LargestSeamText = 2.4;
    private const double LargestLabel = 8;

    private static readonly PdfPen Cut = new("#000000", 0.35);
    private static readonly PdfPen Tab = new("#000000", 0.2);
    private static readonly PdfPen Fold = new("#000000", 0.2, 2, 1.2);
    private static readonly PdfPen Strut = new("#008000", 0.25, 3, 2);
    private static readonly PdfPen Opening = new("#c00000", 0.25);
    private static readonly PdfPen Ruler = new("#000000", 0.2);

    /// <summary>model.pdf, and a summary.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="wish">Scale and paper.</param>
    /// <param name="title">Title of the job.</param>
    /// <param name="work">Told each file when it is begun; ends the work; silent when left out.</param>
    /// <exception cref="ModelPieceTooLargeException">A piece does not go on a sheet.</exception>
    /// <exception cref="OperationCanceledException">The work was to end.</exception>
    public static ImmutableSortedDictionary<string, byte[]> Write(PieceSet pieces, ModelWish wish, string title, PlotWork? work = null)
    {
        var plots = new PlotSummary("model", View, work);
        plots.Begin("model.pdf");
        var model = ModelPlanner.Plan(pieces, wish, (work ?? PlotWork.Silent).Cancel);
        plots.Add("model.pdf", PdfWriter.Write(title, [.. Enumerable.Range(1, model.Sheets).Select(sheet => Page(model, sheet, title))]), new JsonObject
        {
            ["pages"] = model.Sheets,
            ["scale"] = JsonWords.Of(model.Wish.Scale!.Value),
            ["pieces"] = PlotSummary.Labels(model.Placements.Select(place => place.Piece.Label)),
            ["tabs"] = model.Placements.Sum(place => place.Piece.Tabs.Length),
            ["leftOut"] = PlotSummary.Labels(model.LeftOut),
        });
        return plots.Files();
    }

    private static PdfPage Page(PaperModel model, int sheet, string title)
    {
        var page = new PdfPage(model.Wish.Sheet);
        foreach (var place in model.Placements.Where(place => place.Sheet == sheet))
        {
            Draw(page, place);
        }

        Foot(page, model, sheet, title);
        return page;
    }

    private static void Draw(PdfPage page, ModelPlacement place)
    {
        var (piece, map) = (place.Piece, place.Map);
        var tabs = piece.Tabs.Select(tab => tab.Run).ToHashSet();
        foreach (var tab in piece.Tabs)
        {
            page.Line(map.Apply(tab.Shape), isClosed: false, Tab);
        }

        foreach (var (edge, run) in piece.Edges.Select((edge, run) => (edge, run)))
        {
            // Where a tab hangs on, the edge is folded; elsewhere it is cut.
            page.Line(map.Apply([edge.From, edge.To]), isClosed: false, tabs.Contains(run) ? Fold : Cut);
        }

        foreach (var fold in piece.Folds)
        {
            page.Line(map.Apply([fold.From, fold.To]), isClosed: false, Strut);
        }

        foreach (var opening in piece.Openings)
        {
            page.Line(map.Apply(opening), isClosed: true, Opening);
        }

        foreach (var text in Texts(piece, map))
        {
            page.Text(text, default);
        }
    }

    /// <summary>The label in the middle, and along each edge inside its seam with the piece it joins.</summary>
    private static IEnumerable<DrawnText> Texts(ModelPiece piece, RigidMap map)
    {
        var height = Math.Min(LargestLabel, 1.6 * piece.LabelRadius / Math.Max(1, LetterWidth.Estimate(piece.Label, 1)));
        yield return new DrawnText(DrawingLayers.Name, piece.Label, map.Apply(piece.LabelSpot), height, 0, TextAnchor.Middle);
        foreach (var edge in piece.Edges)
        {
            var words = edge.Partner.Length == 0 ? edge.Arc : $"{edge.Arc} {edge.Partner}";
            var small = Math.Min(LargestSeamText, 0.55 * Point2.Distance(edge.From, edge.To) / Math.Max(1, LetterWidth.Estimate(words, 1)));
            var middle = Point2.Between(edge.From, edge.To, 0.5) + (1.1 * small * edge.Inward);
            // Its foot toward the edge it names.
            var up = map.Apply(middle + edge.Inward) - map.Apply(middle);
            yield return new DrawnText(DrawingLayers.Name, words, map.Apply(middle), small, Math.Atan2(-up.X, up.Y) * 180 / Math.PI, TextAnchor.Middle);
        }
    }

    private static void Foot(PdfPage page, PaperModel model, int sheet, string title)
    {
        var low = new Point2(model.Wish.MarginMm, model.Wish.MarginMm);
        page.Line([low + new Point2(0, 2), low, low + new Point2(RulerMm, 0), low + new Point2(RulerMm, 2)], isClosed: false, Ruler);
        Words(FormattableString.Invariant($"100 mm; scale 1:{model.Wish.Scale:0.##}; sheet {sheet} of {model.Sheets}"), new Point2(2, 2.4));
        Words($"{title}. Cut along unbroken lines, fold broken ones back, glue each tab under the edge of the same seam.", new Point2(0, 7));

        void Words(string text, Point2 at) => page.Text(new DrawnText(DrawingLayers.Title, text, low + at, Fits(text), 0, TextAnchor.Start), default);

        double Fits(string text) => Math.Min(FootText, (model.Wish.Sheet.WidthMm - (2 * model.Wish.MarginMm)) / Math.Max(1, LetterWidth.Estimate(text, 1)) * 1.2);
    }
}
