using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Frames;

public class StockCuttingTests
{
    private static readonly Gen<(double[] Lengths, double Bar, double Kerf)> Any =
        from kinds in Gen.Double[200, 1900].Array[1, 5]
        from picks in Gen.Int[0, 99].Array[1, 60]
        from bar in Gen.Double[2000, 6500]
        from kerf in Gen.Double[0, 5]
        select (picks.Select(pick => kinds[pick % kinds.Length]).ToArray(), bar, kerf);

    [Fact]
    public void Cut_AnyStruts_CutsEachOnceFromBarsThatHoldThem() => Any.Sample(one =>
    {
        var frame = Frame(one.Lengths);

        var bars = StockCutting.Cut(frame, 0, one.Bar, one.Kerf)!.Value;

        // By hand: k lengths and k - 1 kerfs fit the bar; the rest is what remains, less the kerf of the last cut where there is room for it.
        var lengthOf = frame.Struts.GroupBy(strut => strut.Class).ToDictionary(group => group.Key, group => group.First().LengthMm);
        Assert.Equal(frame.Struts.CountBy(strut => strut.Class).OrderBy(pair => pair.Key), bars.SelectMany(bar => bar.Classes).CountBy(name => name).OrderBy(pair => pair.Key));
        Assert.All(bars, bar =>
        {
            var used = bar.Classes.Sum(name => lengthOf[name]);
            Assert.True(used + ((bar.Classes.Length - 1) * one.Kerf) <= one.Bar + 0.01);
            Assert.InRange(one.Bar - used - (bar.Classes.Length * one.Kerf), -one.Kerf - 0.01, bar.RestMm + 0.01);
        });
        Assert.InRange(StockCutting.FewestBars(frame, 0, one.Bar, one.Kerf), 1, bars.Length);
    });

    [Fact]
    public void Cut_FirstFitWastes_TakesTheFullerBars()
    {
        // By hand, no kerf, bars of 1000: six of 450 and six of 550 fit six bars exactly; first fit takes them so too. Of
        // 410 (x4), 330 (x4), 260 (x4) each bar holds one of each; longest first puts 410 + 410 together and needs five.
        var frame = Frame([.. Enumerable.Repeat(410.0, 4), .. Enumerable.Repeat(330.0, 4), .. Enumerable.Repeat(260.0, 4)]);

        var bars = StockCutting.Cut(frame, 0, 1000, 0)!.Value;

        Assert.Equal(4, StockCutting.FewestBars(frame, 0, 1000, 0));
        Assert.Equal(4, bars.Length);
        Assert.All(bars, bar => Assert.Equal(3, bar.Classes.Length));
    }

    [Fact]
    public void FewestBars_LongStruts_CountsThemOneABar()
    {
        // By hand: five of 600 from bars of 1000 take a bar each, though 3000 would fill three.
        Assert.Equal(5, StockCutting.FewestBars(Frame([600, 600, 600, 600, 600]), 0, 1000, 3));
    }

    [Fact]
    public void Faults_StrutLongerThanBar_NamesTheLength()
    {
        var wish = new FrameWish(FrameFamily.Icosahedron, 3, 5, "5/8", FrameMeasure.Radius, new Measure(3657.6, "")) { Stock = new StockWish(new Measure(1500, "1.5 m"), new Measure(3, "3 mm")) };

        var fault = Assert.Single(StockList.Faults(wish, FrameBuilder.Build(wish)));

        // C of the 3V 5/8 of R = 3657.6: 1508.436 mm (own calculation).
        Assert.Equal(("frame.stock.bar", "1.5 m"), (fault.Place, fault.Said));
        Assert.Contains("1508.4 mm", fault.Allowed, System.StringComparison.Ordinal);
    }

    /// <summary>Struts of given lengths; where they stand says nothing here.</summary>
    private static Frame Frame(double[] lengths)
    {
        var kinds = lengths.Distinct().Order().ToArray();
        return new Frame(
            [new Hub("H0.1", 0, default(Point3))],
            [.. lengths.Select((length, i) => new Strut(0, i + 1, "K" + System.Array.IndexOf(kinds, length), length))],
            [],
            [],
            ImmutableArray<int>.Empty);
    }
}
