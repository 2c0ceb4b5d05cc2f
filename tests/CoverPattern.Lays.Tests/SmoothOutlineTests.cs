using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Tests;

/// <summary>Outlines with curved parts are simpler for the search, never smaller.</summary>
public class SmoothOutlineTests
{
    [Fact]
    public void Around_RectangleWithRoundBite_FewCornersRoundTheSameCloth()
    {
        // By hand: a half circle of radius 300 in steps of 3 degrees, bitten out of the upper edge of 1,000 x 600.
        var bite = Enumerable.Range(0, 61).Select(i => Grid.Snap(new Point2(500 + (300 * Math.Cos(-i * Math.PI / 60)), 600 + (300 * Math.Sin(-i * Math.PI / 60)))));
        ImmutableArray<Point2> ring = [new(0, 0), new(1000, 0), new(1000, 600), .. bite, new(0, 600)];

        var smooth = SmoothOutline.Around(ring, 24);

        Assert.InRange(smooth.Length, 6, 24);
        Assert.All(ring, corner => Assert.True(ExactPredicates.Locate(Rings.ToSteps(smooth), Grid.ToSteps(corner)) >= 0));
        Assert.InRange(Rings.SignedArea(smooth) - Rings.SignedArea(ring), 0, 3 * 300 * Math.PI);
    }

    [Fact]
    public void Around_RoundedRectangle_HoldsItAndIsHardlyLarger()
    {
        var ring = Grid.Snap(Enumerable.Range(0, 80).Select(i =>
        {
            var (quarter, angle) = (i / 20, ((i / 20) * Math.PI / 2) + (i % 20 * Math.PI / 2 / 19));
            return new Point2((quarter is 0 or 3 ? 400 : -400) + (80 * Math.Cos(angle)), (quarter < 2 ? 200 : -200) + (80 * Math.Sin(angle)));
        }));

        var smooth = SmoothOutline.Around(ring, 40);

        Assert.InRange(smooth.Length, 8, 40);
        Assert.All(ring, corner => Assert.True(ExactPredicates.Locate(Rings.ToSteps(smooth), Grid.ToSteps(corner)) >= 0));
        Assert.InRange(Rings.SignedArea(smooth) / Rings.SignedArea(ring), 1, 1.002);
    }

    [Fact]
    public void Within_HoleOfAWindow_FewCornersInsideIt()
    {
        // Clockwise, as a hole runs: a circle of 500 mm in 232 chords.
        ImmutableArray<Point2> hole = [.. Grid.Snap(Enumerable.Range(0, 232).Select(i => new Point2(250 * Math.Cos(-2 * Math.PI * i / 232), 250 * Math.Sin(-2 * Math.PI * i / 232))))];

        var coarse = CoarseOutline.Within(hole);

        // The search weighs edges against edges: with all 232 the lays of a job with twenty windows took six times as long.
        Assert.InRange(coarse.Length, 8, 32);
        Assert.All(hole, corner => Assert.True(ExactPredicates.Locate(Rings.ToSteps(coarse), Grid.ToSteps(corner)) <= 0));
        Assert.InRange(Rings.SignedArea(coarse) / Rings.SignedArea(hole), 0.97, 1);
    }

    [Fact]
    public void Within_HoleThatBendsBothWays_LiesInsideIt()
    {
        // A ring of two lobes: its radius swings between 200 and 300 mm.
        ImmutableArray<Point2> hole = [.. Grid.Snap(Enumerable.Range(0, 180).Select(i => (250 + (50 * Math.Cos(4 * Math.PI * i / 180))) * new Point2(Math.Cos(-2 * Math.PI * i / 180), Math.Sin(-2 * Math.PI * i / 180))))];

        var coarse = CoarseOutline.Within(hole);

        Assert.InRange(coarse.Length, 8, 60);
        Assert.All(hole, corner => Assert.True(ExactPredicates.Locate(Rings.ToSteps(coarse), Grid.ToSteps(corner)) <= 0));
        Assert.InRange(Rings.SignedArea(coarse) / Rings.SignedArea(hole), 0.95, 1);
    }
}
