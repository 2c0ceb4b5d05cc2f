using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

public class GrainPlacerTests
{
    private static readonly InscribedCircle Circle = new(new Point2(500, 400), 200);

    // Half of the radius below the middle stands y = 300; by hand from the shares .5, .4, .6, .3, .7 of 200 mm.
    [Theory]
    [InlineData(250, 300)]
    [InlineData(301, 320)]
    [InlineData(310, 280)]
    [InlineData(313, 300)]
    public void Place_FoldAlongTheGrain_IsKeptOff(double fold, double expected)
    {
        var grain = GrainPlacer.Place(Circle, [new FoldLine(new Point2(0, fold), new Point2(1000, fold))]);

        Assert.Equal((new Point2(400, expected), new Point2(600, expected)), (grain.From, grain.To));
    }

    [Fact]
    public void Place_FoldAcrossOrFoldsEverywhere_KeepsTheFirstPlace()
    {
        var across = GrainPlacer.Place(Circle, [new FoldLine(new Point2(500, 0), new Point2(520, 800))]);
        var everywhere = GrainPlacer.Place(Circle, [.. Enumerable.Range(20, 30).Select(i => new FoldLine(new Point2(0, 10 * i), new Point2(1000, 10 * i)))]);

        Assert.Equal(300, across.From.Y);
        Assert.Equal(300, everywhere.From.Y);
    }
}
