using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Dxf;

public class DxfWriterTests
{
    [Fact]
    public void Write_GridCoordinates_AreExactInTheText()
    {
        // The farthest number of the grid, one step off: 16 digits, more than a short form of a double keeps.
        var far = new Point2(130_999 + (1023 / 1024.0), -1 / 1024.0);
        var drawing = new Drawing("", [], [], [new DrawnLine(DrawingLayers.Cut, [far, default], IsClosed: false)], []);

        var line = Records(drawing).Single(record => record.Kind == "LINE");

        Assert.Equal("130999.9990234375", line.First(10));
        Assert.Equal("-0.0009765625", line.First(20));
        Assert.Equal("0.0", line.First(11));
    }

    [Theory]
    [InlineData("P1.01", "P1.01")]
    [InlineData("Tür", @"T\U+00FCr")]
    [InlineData("窓", @"\U+7A93")]
    [InlineData("😀", @"\U+D83D\U+DE00")]
    [InlineData("100 %", "100 %")]
    [InlineData("%%u", "%%%%%%u")]
    [InlineData("a^J", "a^ J")]
    [InlineData(@"\U+0041", @"\U+005CU+0041")]
    [InlineData("a\nb", "a b")]
    public void Write_AnyLetters_AreWrittenAsAscii(string text, string expected)
    {
        var drawing = new Drawing("", [], [], [], [new DrawnText(DrawingLayers.Label, text, default, 5, 0, TextAnchor.Middle)]);

        var written = Records(drawing).Single(record => record.Kind == "TEXT");

        Assert.Equal(expected, written.First(1));
    }

    [Fact]
    public void Write_BlockNamesThatDxfCannotTellApart_GetNumbers()
    {
        ImmutableArray<string> names = ["a:b", "A/B", "a_b_2", "ü", ""];
        var drawing = new Drawing("", [.. names.Select(name => new DrawnBlock(name, []))], [], [], []);

        var blocks = Records(drawing).Where(record => record.Kind == "BLOCK").Select(record => record.Name).Skip(2);

        Assert.Equal(["a_b", "A_B_2", "a_b_2_2", @"\U+00FC", "_"], blocks);
        Assert.Empty(DxfStructure.Faults(Encoding.ASCII.GetString(DxfWriter.Write(drawing))));
    }

    [Fact]
    public void Write_MirroredAndTurnedInsertion_ScalesThenTurnsThenMoves()
    {
        var drawing = new Drawing("", [new DrawnBlock("a", [])], [new BlockInsertion("a", new Point2(7, 8), 33.3, IsMirrored: true)], [], []);

        var insert = Records(drawing).Single(record => record.Kind == "INSERT");

        Assert.Equal(["7.0", "8.0", "1.0", "-1.0", "33.3"], new[] { 10, 20, 41, 42, 50 }.Select(insert.First));
    }

    [Fact]
    public void Write_DecimalCommaCulture_SameBytesInUnixLines()
    {
        var drawing = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set);
        var expected = DxfWriter.Write(drawing);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, DxfWriter.Write(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.DoesNotContain((byte)'\r', expected);
    }

    private static ImmutableArray<DxfRecord> Records(Drawing drawing) => DxfRecord.Read(Encoding.ASCII.GetString(DxfWriter.Write(drawing)));
}
