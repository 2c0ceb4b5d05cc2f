using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public sealed class ConvexPartsTests
{
    private static readonly Gen<ImmutableArray<GridPoint>> RingsOfNine =
        Gen.Select(Gen.Long[0, 40], Gen.Long[0, 40], (x, y) => new GridPoint(x, y))
            .Array[3, 9]
            .Select(points => points.Distinct().ToImmutableArray())
            .Where(ExactPredicates.IsSimple)
            .Select(ring => Area(ring) > 0 ? ring : [.. ring.Reverse()]);

    [Fact]
    public void Cover_AnyRing_IsPartedWithoutLossOrOverlap()
    {
        RingsOfNine.Sample(
            ring =>
            {
                var parts = ConvexParts.Cover(ring, mostHollows: 100);

                // Areas are halves of whole numbers and so exact; equal sums and no overlap leave nothing uncovered.
                Assert.Equal(Area(ring), parts.Sum(Area));
                Assert.All(parts, part => Assert.Equal(part.Length, ConvexRings.Hull(part).Length));
                var regions = parts.Select(part => new GridRegion([part])).ToArray();
                Assert.DoesNotContain(regions.SelectMany((one, i) => regions.Skip(i + 1).Select(other => (one, other))), pair => RegionPairs.InteriorsMeet(pair.one, pair.other));
            },
            iter: 1_000);
    }

    [Fact]
    public void Cover_RingWithTwoHoles_IsPartedWithoutLossOrOverlap()
    {
        // Two rings side by side are the holes of a box.
        Gen.Select(RingsOfNine, RingsOfNine).Sample(
            (first, second) =>
            {
                ImmutableArray<GridPoint> box = [new(-10, -10), new(110, -10), new(110, 60), new(-10, 60)];
                ImmutableArray<ImmutableArray<GridPoint>> holes = [[.. first.Reverse()], [.. second.Reverse().Select(p => new GridPoint(p.X + 50, p.Y))]];

                var parts = ConvexParts.Cover(box, holes, most: 100);

                // Holes have negative areas.
                Assert.Equal(Area(box) + holes.Sum(Area), parts.Sum(Area));
                var regions = parts.Select(part => new GridRegion([part])).ToArray();
                Assert.DoesNotContain(regions.SelectMany((one, i) => regions.Skip(i + 1).Select(other => (one, other))), pair => RegionPairs.InteriorsMeet(pair.one, pair.other));
            },
            iter: 300);
    }

    [Fact]
    public void Cover_HoleOfManyCorners_IsMadeSmallerNeverLarger()
    {
        RingsOfNine.Where(ring => ring.Length > 5).Sample(
            hole =>
            {
                ImmutableArray<GridPoint> box = [new(-10, -10), new(60, -10), new(60, 60), new(-10, 60)];

                var covered = ConvexParts.Cover(box, [[.. hole.Reverse()]], most: 5).Sum(Area);

                Assert.InRange(covered, Area(box) - Area(hole), Area(box));
            },
            iter: 300);
    }

    [Fact]
    public void Cover_FewHollowsKept_StillHoldsTheRing()
    {
        RingsOfNine.Sample(
            ring =>
            {
                var parts = ConvexParts.Cover(ring, mostHollows: 1).Select(part => new GridRegion([part])).ToArray();

                var common = parts.Sum(part => OverlapArea.Of(part, new GridRegion([ring])));
                Assert.Equal(Area(ring), common, tolerance: 1e-6);
            },
            iter: 1_000);
    }

    [Fact]
    public void Cover_RingThatCrossesItself_IsItsHull()
    {
        ImmutableArray<GridPoint> bow = [new(0, 0), new(10, 10), new(10, 0), new(0, 10)];

        var parts = ConvexParts.Cover(bow, mostHollows: 10);

        Assert.Equal(100, parts.Sum(Area));
    }

    private static double Area(ImmutableArray<GridPoint> ring) => Rings.SignedArea([.. ring.Select(p => new Point2(p.X, p.Y))]);
}
