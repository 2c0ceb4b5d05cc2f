using System.Linq;

namespace CoverPattern.Geometry.Tests;

public sealed class ConvexMappingTests
{
    private static readonly Point2[] House = [new(0, 0), new(4, 0), new(4, 3), new(2, 5), new(0, 3)];
    private static readonly Point2[] Other = [new(1, 1), new(7, 0), new(9, 4), new(5, 8), new(0, 5)];

    [Fact]
    public void Carry_CornersAndSides_CornerToCornerAndLinearAlongSides()
    {
        // From the definition: on a side only its two ends have weight, each by the share of the way.
        foreach (var i in Enumerable.Range(0, House.Length))
        {
            foreach (var share in new[] { 0, 0.25, 0.5, 0.9 })
            {
                var (from, to) = (House[i], House[(i + 1) % House.Length]);

                var carried = ConvexMapping.Carry(House, Other, Point2.Between(from, to, share));

                Assert.Equal(0, Point2.Distance(carried, Point2.Between(Other[i], Other[(i + 1) % Other.Length], share)), 1e-12);
            }
        }
    }

    [Fact]
    public void Carry_IntoAnAffineImage_IsThatAffineMap()
    {
        // Own derivation: the coordinates reproduce linear functions, so an affine image is met exactly.
        static Point2 Affine(Point2 p) => new((2 * p.X) - p.Y + 3, (0.5 * p.X) + (1.5 * p.Y) - 1);
        Point2[] image = [.. House.Select(Affine)];

        foreach (var inside in new Point2[] { new(2, 2), new(0.5, 0.5), new(3.9, 2.8), new(2, 4.5) })
        {
            Assert.Equal(0, Point2.Distance(Affine(inside), ConvexMapping.Carry(House, image, inside)), 1e-12);
        }
    }

    [Fact]
    public void Carry_Inside_StaysInside()
    {
        for (var x = 0.1; x < 4; x += 0.3)
        {
            for (var y = 0.1; y < 3; y += 0.3)
            {
                var carried = ConvexMapping.Carry(House, Other, new Point2(x, y));

                Assert.All(Other.Select((corner, i) => (corner, Next: Other[(i + 1) % Other.Length])), side => Assert.True(Point2.Cross(side.Next - side.corner, carried - side.corner) > 0));
            }
        }
    }
}
