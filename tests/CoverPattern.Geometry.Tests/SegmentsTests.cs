namespace CoverPattern.Geometry.Tests;

public sealed class SegmentsTests
{
    // By hand: parallel 3 apart; crossing; end against the middle of a level segment; ends 3-4-5 apart; a point for a segment.
    [Theory]
    [InlineData(0, 3, 10, 3, 3)]
    [InlineData(5, -1, 5, 1, 0)]
    [InlineData(4, 2, 4, 9, 2)]
    [InlineData(13, 4, 20, 4, 5)]
    [InlineData(5, 7, 5, 7, 7)]
    public void Distance_FromLevelSegmentOfTen_IsAsByHand(double x1, double y1, double x2, double y2, double expected) =>
        Assert.Equal(expected, Segments.Distance(new(0, 0), new(10, 0), new(x1, y1), new(x2, y2)), precision: 12);
}
