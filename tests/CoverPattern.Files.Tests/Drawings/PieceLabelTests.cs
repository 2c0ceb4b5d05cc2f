using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

public class PieceLabelTests
{
    private static readonly Gen<Point2> Point = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], (x, y) => new Point2(x, y));

    [Fact]
    public void Write_AnyNames_LettersStayInTheCircleAndApart()
    {
        Gen.Select(Gen.String[Gen.Char["P1.07WMä窓 "], 1, 20], Gen.String[Gen.Char["T03W"], 1, 8], Point, Gen.Double[2, 400]).Sample((name, below, centre, radius) =>
        {
            var texts = PieceLabel.Write(name, below, new FreeCircle(centre, radius), DrawingLayers.Label);

            var corners = texts.SelectMany(DrawingExtent.Corners);
            var isInside = corners.All(corner => Point2.Distance(corner, centre) <= radius);
            var gap = DrawingExtent.Corners(texts[0]).Min(corner => corner.Y) - DrawingExtent.Corners(texts[1]).Max(corner => corner.Y);
            return isInside && gap > 0.3 * texts[0].Height && texts.All(text => text.TurnDegrees == 0);
        });
    }

    [Fact]
    public void Write_LargeCircle_LettersNoLargerThanTheLimit()
    {
        var texts = PieceLabel.Write("P1.07", "T03", new FreeCircle(default, 1000), DrawingLayers.Name);

        Assert.Equal([30, 18], texts.Select(text => text.Height));
    }

    [Fact]
    public void ClearOf_AnySegment_CircleLiesInsideAndTheSegmentOutside()
    {
        Gen.Select(Point, Gen.Double[1, 400], Point, Point).Where((_, _, from, to) => Point2.Distance(from, to) > 1).Sample((centre, radius, from, to) =>
        {
            var clear = new FreeCircle(centre, radius).ClearOf(from, to);

            // The segment's nearest point by trying a thousand of them: another road than the formula's.
            var nearest = Enumerable.Range(0, 1001).Min(i => Point2.Distance(clear.Centre, Point2.Between(from, to, i / 1000.0)));
            return Point2.Distance(centre, clear.Centre) + clear.Radius <= radius + 1e-6
                && nearest >= clear.Radius - 1e-6
                && clear.Radius >= (radius / 2) - 1e-6;
        });
    }

    [Fact]
    public void ClearOf_SegmentThroughTheMiddle_HalfTheCircleIsLeft()
    {
        var clear = new FreeCircle(new Point2(10, 20), 8).ClearOf(new Point2(0, 20), new Point2(30, 20));

        Assert.Equal(new FreeCircle(new Point2(10, 24), 4), clear);
    }

    [Theory]
    [InlineData("0123456789", 1.0, 9.5)]
    [InlineData("MW", 10.0, 28.0)]
    [InlineData("窓", 10.0, 15.0)]
    [InlineData("😀", 10.0, 15.0)]
    public void Estimate_Letters_RatherTooWide(string text, double height, double expected) =>
        Assert.Equal(expected, LetterWidth.Estimate(text, height), 9);
}
