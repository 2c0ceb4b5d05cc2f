using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

public class PlacementTests
{
    /// <summary>
    /// A corner of a face that a rim cuts off, which it leaves flat at one end: drawn 0.12 mm farther along there. By hand: the corner lies where
    /// its two edges meet all the same, and the longer edge along its own; turned over too.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LaidBy_RimEndDrawnFartherAlong_CornerStaysOnItsEdges(bool mirrored)
    {
        SpacePoint[] corners = [new(0, 0, 700), new(1000, 0, 700), new(0, 1000, 700)];
        var whole = new TrueFace("F1.01", corners, new TrueEdge[3], new SpacePoint(0, 0, 1), new SpacePoint(1, 0, 0), default);
        var cell = new TrueCell(whole with { Corners = [corners[0], new(60, 0, 700), new(0, 500, 700)] }, 15_000, [], whole);
        FlatPoint[] drawn = [new(200, 300), new(260.12, 300), new(200, 800)];
        FlatPoint[] ring = mirrored ? [.. drawn.Select(point => point with { Y = -point.Y }).Reverse()] : drawn;

        var way = Placement.AllOf(ring, mirrored, cell.Face).MinBy(found => found.Error)!;
        var laid = way.LaidBy(ring, cell);

        var corner = mirrored ? new FlatPoint(200, -300) : drawn[0];
        Assert.True(way.Lift(corner).DistanceTo(corners[0]) > 0.03, "Else nothing is shown: the rim's end draws the corner off.");
        Assert.Equal(0, laid.Lift(corner).DistanceTo(corners[0]), 0.0005);
        Assert.Equal(0.12, laid.Lift(ring[1]).DistanceTo(new SpacePoint(60, 0, 700)), 0.0005);
    }
}
