using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Frames;

public sealed class CutNamesTests
{
    // The trade's names, common practice, no source; facets from own calculation: 5 x rows squared in the top cap,
    // 10 x frequency a row in the belt. A name is about the share of the ball's 20 x frequency^2 facets, near enough.
    [Theory]
    [InlineData(1, "3/4", 2, 15)]
    [InlineData(2, "1/2", 3, 40)]
    [InlineData(3, "3/8", 4, 75)]
    [InlineData(3, "5/8", 5, 105)]
    [InlineData(4, "5/12", 5, 120)]
    [InlineData(4, "1/2", 6, 160)]
    [InlineData(4, "7/12", 7, 200)]
    [InlineData(5, "7/15", 7, 225)]
    [InlineData(5, "8/15", 8, 275)]
    [InlineData(6, "4/9", 8, 300)]
    [InlineData(6, "1/2", 9, 360)]
    [InlineData(6, "5/9", 10, 420)]
    [InlineData(7, "10/21", 10, 455)]
    [InlineData(7, "11/21", 11, 525)]
    [InlineData(8, "11/24", 11, 560)]
    [InlineData(8, "1/2", 12, 640)]
    [InlineData(8, "13/24", 13, 720)]
    public void TryFindRows_CustomaryName_GivesTheRowsOfItsFacets(int frequency, string name, int rows, int facets)
    {
        Assert.True(CutNames.TryFindRows(frequency, name, out var found));

        var frame = FrameBuilder.Build(new FrameWish(FrameFamily.Icosahedron, frequency, found, name, FrameMeasure.Radius, new Measure(1000, "1 m")));
        Assert.Equal(rows, found);
        Assert.Equal(facets, frame.Facets.Length);
        Assert.Equal(name, CutNames.Of(frequency, rows).Name);
        Assert.Contains(new CutName(name, rows), CutNames.Customary(frequency));
    }

    // By hand: rows = fraction x 3 x frequency.
    [Theory]
    [InlineData(3, "4/9", 4)]
    [InlineData(3, "5/9", 5)]
    [InlineData(3, "8/18", 4)]
    [InlineData(3, "1/3", 3)]
    [InlineData(3, "8/9", 8)]
    [InlineData(1, "1/3", 1)]
    [InlineData(1, "2/3", 2)]
    [InlineData(2, "3/6", 3)]
    [InlineData(6, "8/18", 8)]
    [InlineData(6, "500/1000", 9)]
    [InlineData(4, "6/12", 6)]
    public void TryFindRows_EqualFraction_GivesRows(int frequency, string name, int rows)
    {
        Assert.True(CutNames.TryFindRows(frequency, name, out var found));

        Assert.Equal(rows, found);
    }

    [Theory]
    [InlineData(3, "1/2")]
    [InlineData(2, "5/8")]
    [InlineData(6, "5/8")]
    [InlineData(3, "1/1")]
    [InlineData(3, "0/9")]
    [InlineData(3, "9/0")]
    [InlineData(3, "10/9")]
    [InlineData(3, "-4/9")]
    [InlineData(3, " 4/9")]
    [InlineData(3, "4/9/1")]
    [InlineData(3, "99999/9")]
    [InlineData(3, "half")]
    [InlineData(3, "")]
    [InlineData(3, "٤/9")]
    public void TryFindRows_NoCut_IsRefused(int frequency, string name)
    {
        Assert.False(CutNames.TryFindRows(frequency, name, out var rows));

        Assert.Equal(0, rows);
    }

    [Fact]
    public void Of_EveryCut_IsReadBackByItsName()
    {
        foreach (var frequency in Enumerable.Range(1, 8))
        {
            foreach (var rows in Enumerable.Range(1, CutNames.MostRows(frequency)))
            {
                Assert.True(CutNames.TryFindRows(frequency, CutNames.Of(frequency, rows).Name, out var found));
                Assert.Equal(rows, found);
            }
        }
    }

    [Fact]
    public void Near_FractionBetweenRows_OffersCustomaryAndNeighbours()
    {
        // 5/8 of 18 rows is 11.25: 11 and 12 rows beside the customary 8, 9 and 10.
        var near = CutNames.Near(6, "5/8");

        Assert.Equal([new("4/9", 8), new("1/2", 9), new("5/9", 10), new("11/18", 11), new("2/3", 12)], near.AsEnumerable());
    }

    [Theory]
    [InlineData("half")]
    [InlineData("9999/1")]
    [InlineData("0/5")]
    public void Near_Nonsense_OffersCutsThatExist(string said)
    {
        var near = CutNames.Near(3, said);

        Assert.All(near, cut => Assert.InRange(cut.Rows, 1, 8));
        Assert.Contains(new CutName("5/8", 5), near);
    }

    [Fact]
    public void Customary_UnknownFrequency_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CutNames.Customary(13));
}
