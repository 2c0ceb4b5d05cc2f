using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public sealed class ConvexRingsTests
{
    private static readonly Gen<ImmutableArray<GridPoint>> Hulls =
        Gen.Select(Gen.Long[0, 50], Gen.Long[0, 50], (x, y) => new GridPoint(x, y))
            .Array[3, 9]
            .Where(points => points.Any(p => ExactPredicates.Side(points[0], points[1], p) != 0))
            .Select(ConvexRings.Hull);

    [Fact]
    public void Sum_WithHalfTurned_HoldsExactlyTheShiftsThatOverlap()
    {
        Gen.Select(Hulls, Hulls, Gen.Long[-60, 60], Gen.Long[-60, 60]).Sample(
            (left, right, x, y) =>
            {
                var sum = ConvexRings.Sum(left, ConvexRings.HalfTurned(right));

                var shifted = new GridRegion([[.. right.Select(p => new GridPoint(p.X + x, p.Y + y))]]);
                Assert.Equal(RegionPairs.InteriorsMeet(new GridRegion([left]), shifted), ExactPredicates.Locate(sum, new GridPoint(x, y)) > 0);
            },
            iter: 5_000);
    }

    [Fact]
    public void Grow_AnyRing_KeepsTheDistanceAndLittleMore()
    {
        Hulls.Sample(
            hull =>
            {
                var ring = hull.Select(p => new GridPoint(100 * p.X, 100 * p.Y)).ToImmutableArray();

                var grown = ConvexRings.Grow(ring, 1024);

                // 1 mm asked; a step more by design, and corners at most 1 / cos 18 degrees further: 1.0515.
                var distance = RegionPairs.BoundaryDistance(new GridRegion([ring]), new GridRegion([grown]), enough: 2);
                Assert.InRange(distance, 1, 1.002);
                Assert.All(grown, corner => Assert.InRange(ToRing(ring, corner), 1, 1.06));
            },
            iter: 500);
    }

    [Fact]
    public void Hull_PointsOnEdges_AreLeftOut()
    {
        var hull = ConvexRings.Hull([new(0, 0), new(5, 0), new(10, 0), new(10, 10), new(0, 10), new(5, 5), new(0, 0)]);

        Assert.Equal<GridPoint>([new(0, 0), new(10, 0), new(10, 10), new(0, 10)], hull.ToArray());
    }

    private static double ToRing(ImmutableArray<GridPoint> ring, GridPoint point) =>
        ring.Select((corner, i) => Segments.Distance(corner.ToPoint(), ring[(i + 1) % ring.Length].ToPoint(), point.ToPoint())).Min();
}
