using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting.Search;
using NetTopologySuite.Geometries;

namespace CoverPattern.Lays.Tests.Nesting.Search;

public class SpacedOutlineTests
{
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.5)]
    [InlineData(10)]
    public void Grow_RandomOutlines_HoldsRimAndNotMuchMore(double rim)
    {
        var chance = new Chance(11, 0);
        for (var k = 0; k < 30; k++)
        {
            var ring = RandomOutlines.Star(chance, chance.Between(3, 40), 200);

            var grown = SpacedOutline.Grow([ring], rim);

            // Every point of the grown outline is at least the rim away, and at most a corner's excess more.
            var (inner, outer) = (ToRing(ring), ToRing(grown[0]));
            Assert.True(inner.Distance(outer) >= rim);
            Assert.All(outer.Coordinates, corner => Assert.InRange(inner.Distance(new Point(corner)), rim, (1.5 * rim) + 0.01));
        }
    }

    private static LinearRing ToRing(IEnumerable<Point2> ring)
    {
        var corners = ring.Select(point => new Coordinate(point.X, point.Y)).ToList();
        return new LinearRing([.. corners, corners[0]]);
    }
}
