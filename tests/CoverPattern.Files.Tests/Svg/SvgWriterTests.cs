using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Svg;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Svg;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly Drawing Lay = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set);
    private static readonly Drawing Sheet = PatternSheet.Draw(SamplePieces.Set);

    [Fact]
    public void Write_Lay_LinesLieWhereThePiecesLie()
    {
        var root = Read(Lay);

        LineComparison.Check(LineComparison.Expected(SamplePieces.Lay), Lines(root));
    }

    [Fact]
    public void Write_Sheet_HasEveryLineAndTextOnce()
    {
        var root = Read(Sheet);

        Assert.Equal(Sheet.LinesOnSheet().Count(), root.Descendants(Svg + "path").Count());
        Assert.Equal(Sheet.Texts.Select(text => text.Text).Order(StringComparer.Ordinal), Texts(root).Order(StringComparer.Ordinal));
        // Labels along an edge are turned; lines never are.
        Assert.All(root.Descendants().Attributes("transform"), transform => Assert.Equal("text", transform.Parent!.Name.LocalName));
    }

    [Fact]
    public void Write_Layers_AreGroupsNamedForThem()
    {
        var groups = Read(Lay).Elements(Svg + "g").ToArray();

        Assert.All(Lay.LinesOnSheet().Select(line => line.Layer.Name).Distinct(), name => Assert.Single(groups, g => (string?)g.Attribute("id") == name));
        Assert.All(groups, group => Assert.StartsWith("#", (string?)group.Attribute("stroke"), StringComparison.Ordinal));
    }

    [Fact]
    public void Write_Sizes_AreTrueMillimetresRoundEverything()
    {
        // The roll is 5000.5 x 1500 mm. 20 mm are free on every side: left of "0 m" (39.6 mm left of the cut end),
        // below the numbers (56 mm below the roll, 12 mm more for half their height), right of "5 m" (39.6 mm right of the
        // stroke at 5 m) and above the test square (160 mm above the roll); outward to whole millimetres.
        var root = Read(Lay);

        Assert.Equal("5120mm", (string?)root.Attribute("width"));
        Assert.Equal("1768mm", (string?)root.Attribute("height"));
        Assert.Equal("-60 -1680 5120 1768", (string?)root.Attribute("viewBox"));
    }

    [Fact]
    public void Write_TurnedText_TurnsAboutItsFoot()
    {
        var drawing = new Drawing("", [], [], [], [new DrawnText(DrawingLayers.Label, "a", new Point2(10, 20), 4, 90, TextAnchor.End)]);

        var text = Read(drawing).Descendants(Svg + "text").Single();

        // Turned a quarter counter-clockwise the foot of the letters lies to the right of their middle: x + 2.
        Assert.Equal(("12", "-20"), ((string?)text.Attribute("x"), (string?)text.Attribute("y")));
        Assert.Equal("rotate(-90 12 -20)", (string?)text.Attribute("transform"));
        Assert.Equal("end", (string?)text.Attribute("text-anchor"));
    }

    [Fact]
    public void Write_LettersThatXmlForbids_AreReplaced()
    {
        var drawing = new Drawing("\u0001", [], [], [], [new DrawnText(DrawingLayers.Label, "a\u0000b<&😀\ud800", default, 4, 0, TextAnchor.Start)]);

        Assert.Equal(["a\ufffdb<&😀\ufffd"], Texts(Read(drawing)));
    }

    [Fact]
    public void Write_DecimalCommaCulture_SameBytesInUnixLines()
    {
        var expected = SvgWriter.Write(Lay);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(expected, SvgWriter.Write(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.DoesNotContain((byte)'\r', expected);
        Assert.NotEqual(0xEF, expected[0]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Rsvg_EitherDrawing_RendersInTrueSize(bool isLay)
    {
        var file = SvgWriter.Write(isLay ? Lay : Sheet);
        var root = XElement.Parse(Encoding.UTF8.GetString(file));

        // At 25.4 dots an inch a dot is a millimetre.
        var (width, height, ink) = Picture.Read(Picture.Render(file, dotsPerInch: 25.4));

        Assert.Equal((string?)root.Attribute("width"), Invariant(width) + "mm");
        Assert.Equal((string?)root.Attribute("height"), Invariant(height) + "mm");
        Assert.NotEqual(0, ink);
    }

    [Fact]
    public void Rsvg_TestSquare_IsAHundredDotsWide()
    {
        // Only the square: 100 mm and 20 mm free on each side.
        var corner = new Point2(0, 0);
        var square = new DrawnLine(DrawingLayers.TestSquare, [corner, new(100, 0), new(100, 100), new(0, 100)], IsClosed: true);
        var file = SvgWriter.Write(new Drawing("", [], [], [square], []));

        var across = Picture.InkAcrossTheMiddle(Picture.Render(file, dotsPerInch: 254));

        // Ten dots a millimetre: the middles of the two sides lie 1000 dots apart, the first 200 dots from the edge.
        Assert.Equal(2, across.Length);
        Assert.Equal(200, (across[0].Start + across[0].End) / 2.0, 0.6);
        Assert.Equal(1200, (across[1].Start + across[1].End) / 2.0, 0.6);
    }

    private static string Invariant(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static XElement Read(Drawing drawing) => XElement.Parse(Encoding.UTF8.GetString(SvgWriter.Write(drawing)));

    private static string[] Texts(XElement root) => [.. root.Descendants(Svg + "text").Select(text => text.Value)];

    private static ImmutableArray<(string Layer, ImmutableArray<Point2> Points)> Lines(XElement root) =>
    [
        .. root.Descendants(Svg + "path").Select(path => ((string)path.Parent!.Attribute("id")!, Points((string)path.Attribute("d")!))),
    ];

    /// <summary>The points of "M x y L x y ... Z", y turned up again.</summary>
    private static ImmutableArray<Point2> Points(string path)
    {
        var numbers = path.Replace('M', ' ').Replace('L', ' ').Replace('Z', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        return [.. numbers.Chunk(2).Select(pair => new Point2(pair[0], -pair[1]))];
    }
}
