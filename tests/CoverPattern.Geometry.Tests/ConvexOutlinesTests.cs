using System;
using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public sealed class ConvexOutlinesTests
{
    private static readonly Gen<ImmutableArray<GridPoint>> Hulls =
        Gen.Select(Gen.Long[0, 50], Gen.Long[0, 50], (x, y) => new GridPoint(x, y))
            .Array[3, 9]
            .Where(points => points.Any(p => ExactPredicates.Side(points[0], points[1], p) != 0))
            .Select(ConvexRings.Hull);

    [Fact]
    public void AreApart_AnyTwoHulls_AgreesWithTheExactTest()
    {
        // Whole steps of the grid are exact in double numbers, so the two must agree to the last one that touch.
        Gen.Select(Hulls, Hulls, Gen.Long[-60, 60], Gen.Long[-60, 60]).Sample(
            (left, right, x, y) =>
            {
                ImmutableArray<GridPoint> shifted = [.. right.Select(p => new GridPoint(p.X + x, p.Y + y))];

                var apart = ConvexOutlines.AreApart(Whole(left), Whole(shifted));

                Assert.Equal(!RegionPairs.InteriorsMeet(new GridRegion([left]), new GridRegion([shifted])), apart);
            },
            iter: 5_000);
    }

    [Fact]
    public void KeepApart_AnyTwoHulls_AgreesWithTheDistance()
    {
        Gen.Select(Hulls, Hulls, Gen.Long[-60, 60], Gen.Long[-60, 60]).Sample(
            (left, right, x, y) =>
            {
                ImmutableArray<GridPoint> shifted = [.. right.Select(p => new GridPoint(p.X + x, p.Y + y))];
                var (one, other) = (new GridRegion([left]), new GridRegion([shifted]));

                // Steps of the grid as units: 7.3 of them are asked.
                var keeps = ConvexOutlines.KeepApart(Whole(left), Whole(shifted), 7.3);

                Assert.Equal(!RegionPairs.InteriorsMeet(one, other) && RegionPairs.BoundaryDistance(one, other, enough: 100) * Math.Pow(2, 10) >= 7.3, keeps);
            },
            iter: 2_000);
    }

    [Fact]
    public void AreApart_LineThroughAnOutline_IsNot()
    {
        Point2[] square = [new(0, 0), new(4, 0), new(4, 4), new(0, 4)];

        Assert.False(ConvexOutlines.AreApart(square, [new(-1, 2), new(5, 2)]));
        Assert.True(ConvexOutlines.AreApart(square, [new(-1, 4), new(5, 4)]));
        Assert.True(ConvexOutlines.AreApart(square, [new(5, -1), new(9, 5)]));
        Assert.False(ConvexOutlines.KeepApart(square, [new(5, -1), new(5, 5)], 1.1));
        Assert.True(ConvexOutlines.KeepApart(square, [new(5, -1), new(5, 5)], 0.9));
    }

    private static Point2[] Whole(ImmutableArray<GridPoint> ring) => [.. ring.Select(p => new Point2(p.X, p.Y))];
}
