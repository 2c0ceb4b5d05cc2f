using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Plots;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Files.Tests.Pdf;
using CoverPattern.Geometry;
using CoverPattern.Lays.Models;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Tests.Plots;

/// <summary>The paper model read back with PdfPig: what is printed is what was planned, in true size.</summary>
public class ModelPlotsTests
{
    private static readonly ModelWish Wish = new(10, new SheetSize(210, 297));

    private static readonly PaperModel Model = ModelPlanner.Plan(SamplePieces.Set, Wish);

    private static readonly ImmutableSortedDictionary<string, byte[]> Files = ModelPlots.Write(SamplePieces.Set, Wish, "Model of a cover");

    private static readonly ImmutableArray<PdfReading> Pages = PdfReading.Read(Files["model.pdf"]);

    [Fact]
    public void Write_Model_APageASheetWithARulerOfHundredMillimetres()
    {
        Assert.Equal(Model.Sheets, Pages.Length);
        Assert.All(Pages, page => Assert.Equal((210, 297), (Math.Round(page.Width, 3), Math.Round(page.Height, 3))));
        Assert.All(Pages, page => Assert.Contains(page.Lines, line => line.Points.Length == 4 && Math.Abs(Point2.Distance(line.Points[1], line.Points[2]) - 100) < 0.001));
    }

    [Fact]
    public void Write_Model_EveryEdgeTabFoldAndOpeningIsPrintedWhereItWasPlanned()
    {
        foreach (var place in Model.Placements)
        {
            var lines = Pages[place.Sheet - 1].Lines;
            Assert.All(place.Piece.Edges, edge => Assert.Contains(lines, line => Same(line.Points, place.Map.Apply([edge.From, edge.To]))));
            Assert.All(place.Piece.Tabs, tab => Assert.Contains(lines, line => Same(line.Points, place.Map.Apply(tab.Shape))));
            Assert.All(place.Piece.Folds, fold => Assert.Contains(lines, line => Same(line.Points, place.Map.Apply([fold.From, fold.To]))));
            Assert.All(place.Piece.Openings, rim => Assert.Contains(lines, line => Same(line.Points, place.Map.Apply(rim.Add(rim[0])))));
        }

        static bool Same(ImmutableArray<Point2> found, ImmutableArray<Point2> wanted) =>
            found.Length == wanted.Length && found.Zip(wanted).All(pair => Point2.Distance(pair.First, pair.Second) < 0.01);
    }

    [Fact]
    public void Write_Model_SeamsBearTheirLabelAndTheirPartners()
    {
        var edge = Model.Placements.SelectMany(place => place.Piece.Edges.Where(edge => edge.Partner.Length > 0).Select(edge => (place.Sheet, edge))).First();

        Assert.Contains($"{edge.edge.Arc} {edge.edge.Partner}", Pages[edge.Sheet - 1].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Summary_Model_TellsScaleSheetsAndTabs()
    {
        var plot = JsonNode.Parse(Files["summary.json"])!["plots"]![0]!;

        Assert.Equal((Model.Sheets, 10.0, Model.Placements.Sum(place => place.Piece.Tabs.Length)), ((int)plot["pages"]!, (double)plot["scale"]!, (int)plot["tabs"]!));
    }
}
