using System;
using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public sealed class RegionPairsTests
{
    private static readonly ImmutableArray<GridPoint> Square = Box(0, 0, 10, 10);

    // A small grid makes corners on edges, corners on corners and shared edges common.
    private static readonly Gen<ImmutableArray<GridPoint>> SmallRings =
        Gen.Select(Gen.Long[0, 6], Gen.Long[0, 6], (x, y) => new GridPoint(x, y))
            .Array[3, 7]
            .Select(points => points.Distinct().ToImmutableArray())
            .Where(ExactPredicates.IsSimple)
            .Select(CounterClockwise);

    [Fact]
    public void InteriorsMeet_SmallRings_AgreesWithCommonArea()
    {
        Gen.Select(SmallRings, SmallRings).Sample(
            (left, right) =>
            {
                var (one, other) = (new GridRegion([left]), new GridRegion([right]));

                // The least common area of such rings is some thousandths of a square.
                Assert.Equal(OverlapArea.Of(one, other) > 1e-6, RegionPairs.InteriorsMeet(one, other));
                Assert.Equal(RegionPairs.InteriorsMeet(one, other), RegionPairs.InteriorsMeet(other, one));
            },
            iter: 20_000);
    }

    [Fact]
    public void InteriorsMeet_SmallRingsInAHole_AgreesWithCommonArea()
    {
        // By construction the hole is the random ring itself, inside a frame one step wider than the small grid.
        Gen.Select(SmallRings, SmallRings).Sample(
            (hole, right) =>
            {
                var frame = new GridRegion([Box(-1, -1, 7, 7), [.. hole.Reverse()]]);
                var other = new GridRegion([right]);

                Assert.Equal(OverlapArea.Of(frame, other) > 1e-6, RegionPairs.InteriorsMeet(frame, other));
            },
            iter: 5_000);
    }

    [Fact]
    public void InteriorsMeet_SameRing_IsTrue() =>
        Assert.True(RegionPairs.InteriorsMeet(new GridRegion([Square]), new GridRegion([[.. Square.Skip(2), .. Square.Take(2)]])));

    [Fact]
    public void InteriorsMeet_CrossThroughCornersOnly_IsTrue()
    {
        // A diamond whose corners are the middles of the square's edges: no edge crosses another.
        ImmutableArray<GridPoint> diamond = [new(5, 0), new(10, 5), new(5, 10), new(0, 5)];

        Assert.True(RegionPairs.InteriorsMeet(new GridRegion([Square]), new GridRegion([diamond])));
    }

    [Fact]
    public void InteriorsMeet_FillsHoleExactly_IsFalse()
    {
        var frame = new GridRegion([Box(-5, -5, 15, 15), [.. Square.Reverse()]]);

        Assert.False(RegionPairs.InteriorsMeet(frame, new GridRegion([Square])));
        Assert.True(RegionPairs.InteriorsMeet(frame, new GridRegion([Box(0, 0, 11, 10)])));
    }

    [Theory]
    [InlineData(10, 0, false)]
    [InlineData(9, 0, true)]
    [InlineData(10, 10, false)]
    [InlineData(10, 3, false)]
    public void InteriorsMeet_ShiftedSquare_IsTrueFromOneStepOn(long x, long y, bool isMeeting) =>
        Assert.Equal(isMeeting, RegionPairs.InteriorsMeet(new GridRegion([Square]), new GridRegion([Box(x, y, x + 10, y + 10)])));

    [Fact]
    public void BoundaryDistance_CornerToCorner_IsTheDiagonal()
    {
        // 3 mm along and 4 mm across: 5 mm.
        var left = new GridRegion([Box(0, 0, 1024, 1024)]);
        var right = new GridRegion([Box(4 * 1024, 5 * 1024, 6 * 1024, 6 * 1024)]);

        var distance = RegionPairs.BoundaryDistance(left, right, enough: 7);

        Assert.Equal(5, distance, precision: 12);
        Assert.Equal(4, RegionPairs.BoundaryDistance(left, right, enough: 4));
    }

    private static ImmutableArray<GridPoint> Box(long left, long low, long right, long high) =>
        [new(left, low), new(right, low), new(right, high), new(left, high)];

    private static ImmutableArray<GridPoint> CounterClockwise(ImmutableArray<GridPoint> ring) =>
        Rings.SignedArea([.. ring.Select(p => p.ToPoint())]) > 0 ? ring : [.. ring.Reverse()];
}
