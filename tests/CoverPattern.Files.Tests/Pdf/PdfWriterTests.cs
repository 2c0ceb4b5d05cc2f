using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Pdf;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;
using UglyToad.PdfPig;

namespace CoverPattern.Files.Tests.Pdf;

public class PdfWriterTests
{
    // The unit of places in a PDF is 1/72 inch.
    private const double PointsPerMillimetre = 72 / 25.4;

    [Fact]
    public void Write_HundredMillimetres_AreThatManyPoints()
    {
        var page = new PdfPage(new SheetSize(210, 297));
        page.Line([new(10, 20), new(110, 20)], isClosed: false, new PdfPen("#000000", 0.3));

        using var document = PdfDocument.Open(PdfWriter.Write("line", [page]));
        var bounds = document.GetPage(1).Paths.Single().GetBoundingRectangle()!.Value;

        // 100 / 25.4 x 72, by hand.
        Assert.Equal(283.465, bounds.Width, 0.001);
        Assert.Equal(210 * PointsPerMillimetre, document.GetPage(1).Width, 0.001);
    }

    [Theory]
    // 14,400 / 72 x 25.4 mm is the longest page of plain units.
    [InlineData(5080, 1)]
    [InlineData(5081, 2)]
    // Three units are needed for 12 m: 12,000 / 5080 = 2.36.
    [InlineData(12000, 3)]
    public void Write_LongPage_UnitGrowsAndPlacesStay(double length, int unit)
    {
        var page = new PdfPage(new SheetSize(length, 100));
        page.Line([new(0, 50), new(length, 50)], isClosed: false, new PdfPen("#000000", 0.3));

        var read = PdfReading.Read(PdfWriter.Write("long", [page])).Single();

        Assert.Equal(unit, page.UserUnit);
        Assert.Equal(length, read.Width, 0.01);
        Assert.Equal(length, read.Lines.Single().Points[1].X, 0.01);
    }

    [Fact]
    public void Helvetica_EveryLetter_IsAsWideAsAnotherLibrarySays()
    {
        var text = new string([.. Helvetica.Letters().Where(letter => letter is not ('\u00a0' or '\u00ad' or '\u021A' or '\u021B'))]);
        var page = new PdfPage(new SheetSize(3000, 100));
        page.Text(new DrawnText(DrawingLayers.Label, text, new Point2(10, 50), 5, 0, TextAnchor.Start), default);

        using var document = PdfDocument.Open(PdfWriter.Write("letters", [page]));
        var letters = document.GetPage(1).Letters;

        Assert.Equal(text, string.Concat(letters.Select(letter => letter.Value)));
        // Letters narrower than their room are drawn at the height that was asked for.
        var size = 5 / Helvetica.CapitalHeight * PointsPerMillimetre;
        Assert.All(letters, letter => Assert.Equal(
            Helvetica.Width(letter.Value) * 5 * PointsPerMillimetre, letter.EndBaseLine.X - letter.StartBaseLine.X, size * 0.001));
    }

    [Theory]
    [InlineData("lay-canvas")]
    [InlineData("Tür (\\)")]
    [InlineData("Łódź 窓 \U0001F3D5")]
    public void Write_AnyTitle_StandsInTheProperties(string title)
    {
        using var document = PdfDocument.Open(PdfWriter.Write(title, [new PdfPage(new SheetSize(200, 100))]));

        Assert.Equal(title, document.Information.Title);
    }

    [Theory]
    [InlineData("窓 2", "{7A93} 2")]
    [InlineData("(a\\b)", "(a\\b)")]
    [InlineData("Tür", "Tür")]
    [InlineData("Łódź: žluťoučký kůň, İğne – Őrs", "Łódź: žluťoučký kůň, İğne – Őrs")]
    // The font has one glyph for both, and readers give back the older letter.
    [InlineData("Ț", "Ţ")]
    public void Write_AnyName_CanBeReadBack(string name, string expected)
    {
        var page = new PdfPage(new SheetSize(200, 100));
        page.Text(new DrawnText(DrawingLayers.Label, name, new Point2(100, 50), 5, 30, TextAnchor.Middle), default);

        Assert.Equal(expected, PdfReading.Read(PdfWriter.Write("name", [page])).Single().Words);
    }

    [Fact]
    public void Write_Text_ItsMiddleIsWhereItShouldBe()
    {
        var page = new PdfPage(new SheetSize(200, 100));
        page.Text(new DrawnText(DrawingLayers.Label, "HEM", new Point2(100, 50), 10, 0, TextAnchor.Middle), default);

        using var document = PdfDocument.Open(PdfWriter.Write("name", [page]));
        var letters = document.GetPage(1).Letters;

        var middle = (letters[0].StartBaseLine.X + letters[^1].EndBaseLine.X) / 2 / PointsPerMillimetre;
        Assert.Equal(100, middle, 0.01);
        // Capitals are 10 mm high, their middle at 50.
        Assert.Equal(45, letters[0].StartBaseLine.Y / PointsPerMillimetre, 0.01);
    }

    [Fact]
    public void Write_Drawing_QpdfFindsNothingToMend()
    {
        var file = PdfWriter.Write("lay (1)", [PdfDrawing.Whole(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)), PdfDrawing.Whole(PatternSheet.Draw(SamplePieces.Set))]);

        var said = ReaderPrograms.Run(file, ".pdf", "qpdf", name => ["--check", name]);

        Assert.Contains("No syntax or stream encoding errors found", said, System.StringComparison.Ordinal);
        Assert.All(file, sign => Assert.True(sign is (byte)'\n' or (>= 32 and < 127)));
        Assert.Equal(file, PdfWriter.Write("lay (1)", [PdfDrawing.Whole(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)), PdfDrawing.Whole(PatternSheet.Draw(SamplePieces.Set))]));
    }
}
