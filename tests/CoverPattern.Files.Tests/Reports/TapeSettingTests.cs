using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Tests.Reports;

public class TapeSettingTests
{
    private static readonly Ruler Millimetres = new(IsInches: false);

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(9)]
    public void Steps_BandOfAnyLength_TapesFindEveryCorner(int bays)
    {
        var band = Band(bays);
        var lengths = new SideLengths(new PieceSet([band], []), Millimetres);

        var steps = TapeSetting.Steps(band, lengths).ToArray();

        // Two sides of bays + 1 corners, two of them the base.
        Assert.Equal((2 * bays) + 1, steps.Length);
        var ends = TapeSetting.Base(band);
        var (a, b) = (band.SewLine[ends.From], band.SewLine[ends.To]);
        foreach (var step in steps.Skip(1))
        {
            var words = step.Split(' ');
            var corner = band.SewLine[int.Parse(words[1].TrimEnd(':'), CultureInfo.InvariantCulture) - 1];
            var froms = words.Index().Where(word => word.Item == "from").Select(word => double.Parse(words[word.Index - 1], CultureInfo.InvariantCulture)).ToArray();
            var set = Meet(a, b, froms[0], froms[1], step.EndsWith("right of the base", StringComparison.Ordinal));
            // Half a millimetre of rounding in each tape, and arcs that cross under 20 degrees or more: 0.7 / sin 20 = 2.1 mm.
            Assert.InRange(Point2.Distance(set, corner), 0, 2.1);
        }
    }

    [Fact]
    public void Checks_FourCorners_BothDiagonals()
    {
        var pattern = SamplePieces.Set.Patterns[1];
        var lengths = new SideLengths(SamplePieces.Set, Millimetres);

        // By hand: (0, 0) to (800.5, 700.25) is 1063.6; (800.5, 0) to (0, 600) is 1000.4.
        Assert.Equal(["1-3: 1064", "2-4: 1000"], TapeSetting.Checks(pattern, lengths));
        Assert.Empty(TapeSetting.Checks(SamplePieces.Set.Patterns[0], lengths));
    }

    [Fact]
    public void Checks_Band_TwoLongestSpans()
    {
        var band = Band(4);
        var lengths = new SideLengths(new PieceSet([band], []), Millimetres);

        var spans = TapeSetting.Checks(band, lengths).Select(check => double.Parse(check.Split(' ')[1], CultureInfo.InvariantCulture)).ToArray();

        var all = from i in Enumerable.Range(0, band.SewLine.Length)
                  from j in Enumerable.Range(i + 2, Math.Max(0, band.SewLine.Length - i - 2))
                  where i > 0 || j < band.SewLine.Length - 1
                  select Point2.Distance(band.SewLine[i], band.SewLine[j]);
        Assert.Equal(all.OrderDescending().Take(2).Select(length => Math.Round(length)), spans);
    }

    [Fact]
    public void Steps_ClosedCurve_DiameterOfTheCircleOfItsArea()
    {
        ImmutableArray<Point2> ring = [.. Enumerable.Range(0, 64).Select(i => RigidMap.FromDegrees(i * 360.0 / 64, default, mirrored: false).Apply(new Point2(300, 0)))];
        var circle = SamplePieces.Set.Patterns[0] with
        {
            SewLine = ring,
            Runs = [new EdgeRun(0, 0, EdgeRole.Rim, "c1", string.Empty, EdgeSide.None, 1884, 15)],
        };
        var lengths = new SideLengths(new PieceSet([circle], []), Millimetres);

        // Area of the 64 corners: 32 * 300^2 * sin(360/64 degrees) = 282,289 mm2, a circle of 599.5 mm.
        Assert.Equal(["Circle of diameter 600"], TapeSetting.Steps(circle, lengths));
        Assert.Equal((0, 32), TapeSetting.Base(circle));
    }

    /// <summary>A row of trapezes that bends like one of a dome: lower edge outside, 1200 and 900 mm a bay, 1000 mm high.</summary>
    private static Pattern Band(int bays)
    {
        // The angle a bay takes of the two circles on which the corners lie: chords of 1200 and 900 mm, 1000 mm apart.
        var bay = 2 * Math.Asin((1200 - 900) / (2.0 * 1000));
        var (outer, inner) = (1200 / (2 * Math.Sin(bay / 2)), 900 / (2 * Math.Sin(bay / 2)));
        ImmutableArray<Point2> ring =
        [
            .. Enumerable.Range(0, bays + 1).Select(i => At(outer, i)),
            .. Enumerable.Range(0, bays + 1).Select(i => At(inner, bays - i)),
        ];
        return SamplePieces.Set.Patterns[0] with
        {
            SewLine = ring,
            Runs = [.. ring.Select((corner, i) => new EdgeRun(
                i, (i + 1) % ring.Length, EdgeRole.Seam, "c" + i, "plain", EdgeSide.Over, Point2.Distance(corner, ring[(i + 1) % ring.Length]), 15))],
        };

        Point2 At(double radius, int i) => new(radius * Math.Cos(bay * i), radius * Math.Sin(bay * i));
    }

    private static Point2 Meet(Point2 a, Point2 b, double fromA, double fromB, bool right)
    {
        var length = Point2.Distance(a, b);
        var along = ((fromA * fromA) - (fromB * fromB) + (length * length)) / (2 * length);
        var aside = Math.Sqrt((fromA * fromA) - (along * along));
        var unit = (b - a).Unit();
        return a + (along * unit) + ((right ? -aside : aside) * unit.QuarterTurned());
    }
}
