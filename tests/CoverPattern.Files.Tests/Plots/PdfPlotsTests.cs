using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Plots;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Files.Tests.Pdf;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Tests.Plots;

/// <summary>The papers in true size, read back with PdfPig and painted by pdftoppm.</summary>
public class PdfPlotsTests
{
    // Tiles put together by hand err by far more; a drawn file by a hundredth.
    private const double Tolerance = 0.05;

    private static readonly TileWish A4 = new(new SheetSize(210, 297));

    private static readonly ImmutableSortedDictionary<string, byte[]> Files =
        PdfPlots.Write(SamplePieces.Set, [SamplePieces.Lay], new PaperNotes(["deck.datum: lowest"]), new PdfWish(null, A4));

    [Fact]
    public void Write_Result_OneFileALayAndOneForThePatternsAndTheirTiles() =>
        Assert.Equal(["lay-canvas-tiles.pdf", "lay-canvas.pdf", "patterns-tiles.pdf", "patterns.pdf", "summary.json"], Files.Keys);

    [Fact]
    public void Write_LayOnOnePage_LinesLieAsOnTheCloth()
    {
        var page = PdfReading.Read(Files["lay-canvas.pdf"]).Single();

        var wanted = LineComparison.Expected(SamplePieces.Lay).Where(line => line.Layer == "CUT").Select(line => line.Points).ToArray();
        // The page's own origin: the first outline tells it, the others must agree.
        var found = wanted.Select(ring => page.Lines.Where(line => line.Points.Length == ring.Length + 1).ToArray()).ToArray();
        var shift = Square(page).Low - new Point2(0, Math.Ceiling(SamplePieces.Lay.RollWidthMm) + 60);
        foreach (var (ring, candidates) in wanted.Zip(found))
        {
            Assert.Contains(candidates, line => ring.Zip(line.Points).All(pair => Point2.Distance(pair.First + shift, pair.Second) < 0.01));
        }
    }

    [Theory]
    [InlineData("lay-canvas.pdf")]
    [InlineData("lay-canvas-tiles.pdf")]
    [InlineData("patterns.pdf")]
    [InlineData("patterns-tiles.pdf")]
    public void Write_EveryPage_HasASquareOfHundredMillimetres(string name)
    {
        var pages = PdfReading.Read(Files[name]);
        var maps = name.EndsWith("tiles.pdf", StringComparison.Ordinal) ? 1 : 0;

        Assert.All(pages.Skip(maps), page => Assert.Equal((100, 100), (Math.Round(Square(page).Width, 2), Math.Round(Square(page).Height, 2))));
        Assert.All(pages.Skip(maps), page => Assert.Contains("NOT CONFIRMED", page.Words, StringComparison.Ordinal));
    }

    [Fact]
    public void Write_PagesOfPatterns_AreAsLargeAsTheirPatternsAndTheListStandsOnThePageBefore()
    {
        ImmutableArray<string> open = [.. Enumerable.Range(0, 100).Select(i => $"cloths[{i}].selvedge: 10 mm")];

        var pages = PdfReading.Read(PdfPlots.Write(SamplePieces.Set, [], new PaperNotes(open), new PdfWish(null, null))["patterns.pdf"]);

        Assert.Equal(SamplePieces.Set.Patterns.Length + 1, pages.Length);
        Assert.All(open, line => Assert.Contains(line, pages[0].Words, StringComparison.Ordinal));
        Assert.All(pages.Skip(1), page => Assert.Contains("NOT CONFIRMED: 100 assumed values, listed on the first page", page.Words, StringComparison.Ordinal));
        // A hundred lines of 20 mm stand on no page of a pattern: head and caption take 400 mm at most.
        Assert.All(SamplePieces.Set.Patterns.Zip(pages.Skip(1)), pair => Assert.InRange(pair.Second.Height, 100, Rings.Bounds(pair.First.CutLine).Height + 400));
        Assert.Equal(SamplePieces.Set.Patterns.Length, PdfReading.Read(PdfPlots.Write(SamplePieces.Set, [], PaperNotes.None, new PdfWish(null, null))["patterns.pdf"]).Length);
    }

    [Fact]
    public void Write_Tiles_PutTogetherGiveTheLay()
    {
        var plan = TileSheets.Plan(TileSheets.Printed(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)), A4);
        var pages = PdfReading.Read(Files["lay-canvas-tiles.pdf"]).Skip(1).ToArray();

        Assert.Equal(plan.Tiles.Length, pages.Length);
        Assert.All(pages, page => Assert.Equal((plan.Wish.Sheet.WidthMm, plan.Wish.Sheet.HeightMm), (Math.Round(page.Width, 3), Math.Round(page.Height, 3))));
        var together = plan.Tiles.Zip(pages).SelectMany(pair => pair.Second.Lines.SelectMany(line => line.Points.Zip(line.Points.Skip(1)))
            .Select(step => (From: step.First + Shift(pair.First), To: step.Second + Shift(pair.First)))).ToArray();
        foreach (var line in LineComparison.Expected(SamplePieces.Lay))
        {
            var ring = line.Points.Length == 2 ? line.Points : line.Points.Add(line.Points[0]);
            foreach (var point in ring.Zip(ring.Skip(1)).SelectMany(step => Enumerable.Range(0, 40).Select(i => Point2.Between(step.First, step.Second, i / 40.0))))
            {
                Assert.True(together.Min(step => Segments.Distance(step.From, step.To, point)) < Tolerance, $"{line.Layer} at {point}");
            }
        }

        // The printable area's corner stands at the tile's corner.
        Point2 Shift(Tile tile) => tile.Area.Low - new Point2(10, 10);
    }

    [Fact]
    public void Write_Neighbours_CrossesMeet()
    {
        var plan = TileSheets.Plan(TileSheets.Printed(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)), A4);
        var pages = PdfReading.Read(Files["lay-canvas-tiles.pdf"]).Skip(1).ToArray();

        var pairs = plan.Tiles.Where(tile => plan.At(tile.Column + 1, tile.Row) is not null).ToArray();

        Assert.NotEmpty(pairs);
        foreach (var left in pairs)
        {
            var right = plan.At(left.Column + 1, left.Row)!;
            // By hand: two crosses stand half an overlap (5 mm) from the shown area's right edge, the neighbour's from its left edge.
            var (onLeft, onRight) = (pages[left.Number - 1], pages[right.Number - 1]);
            Assert.True(HasCross(onLeft, new Point2(plan.Wish.Sheet.WidthMm - 15, 15)));
            Assert.True(HasCross(onRight, new Point2(15, 15)));
            Assert.Equal(left.Area.High.X - 5, right.Area.Low.X + 5, 9);
            Assert.Contains($"joins sheet {right.Number}", onLeft.Words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Write_Sections_PagesOfThatLengthThatTogetherAreTheLay()
    {
        var files = PdfPlots.Write(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, new PdfWish(2000, null));

        var pages = PdfReading.Read(files["lay-canvas.pdf"]);

        Assert.Equal(["lay-canvas.pdf", "patterns.pdf", "summary.json"], files.Keys);
        Assert.True(pages.Length >= 3);
        // The roll's outline, broken at the sections' ends, tells their lengths; the head may reach farther.
        var lengths = pages.Select(page => page.Lines.SelectMany(line => line.Points.Zip(line.Points.Skip(1)))
            .Where(step => Math.Abs(step.First.Y - step.Second.Y) < 0.001).Max(step => Math.Abs(step.First.X - step.Second.X))).ToArray();
        Assert.All(lengths, length => Assert.InRange(length, 0, 2000.001));
        Assert.Equal(SamplePieces.Lay.LengthMm, lengths.Sum(), 0.05);
    }

    [Fact]
    public void Write_Tiles_PaintedByPopplerInTheirSize()
    {
        // 25.4 dots an inch: one dot a millimetre.
        var picture = ReaderPrograms.Run(Files["lay-canvas-tiles.pdf"], ".pdf", "pdftoppm", name => ["-r", "25.4", "-f", "2", "-l", "2", "-gray", name]);

        // The head of a portable grey map: P5, width, height.
        Assert.Matches(@"^P5\s(297\s210|298\s210|298\s211|297\s211|210\s297|210\s298|211\s297|211\s298)\s", picture);
    }

    [Fact]
    public void Summary_Tiles_TellsSheets()
    {
        var plots = JsonNode.Parse(Files["summary.json"])!["plots"]!.AsArray();

        var tiles = plots.Single(plot => (string?)plot!["file"] == "lay-canvas-tiles.pdf")!;

        Assert.Equal((int)tiles["pages"]! - 1, (int)tiles["tiles"]![0]!["sheets"]!);
    }

    /// <summary>The square of any colour whose sides are 100 mm.</summary>
    private static Box2 Square(PdfReading page) => page.Lines
        .Where(line => line.Points.Length == 5 && line.Points.Zip(line.Points.Skip(1)).All(step => Math.Abs(Point2.Distance(step.First, step.Second) - 100) < 0.005))
        .Select(line => Rings.Bounds(line.Points)).First();

    private static bool HasCross(PdfReading page, Point2 at) => page.Lines.Count(line =>
        line.Points.Length == 2 && Point2.Distance(Point2.Between(line.Points[0], line.Points[1], 0.5), at) < 0.01 && Math.Abs(Point2.Distance(line.Points[0], line.Points[1]) - 10) < 0.01) == 2;
}
