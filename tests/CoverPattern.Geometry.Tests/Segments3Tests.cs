using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public class Segments3Tests
{
    private static readonly Gen<Point3> Point = Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100], Gen.Double[-100, 100], (x, y, z) => new Point3(x, y, z));

    [Fact]
    public void Distance_SkewSegments_IsThatOfTheLines() =>
        Assert.Equal(7, Segments3.Distance(new(-5, 0, 0), new(5, 0, 0), new(0, -5, 7), new(0, 5, 7)), 1e-12);

    [Fact]
    public void Distance_BesideTheEnd_IsThatOfTheEnd() =>
        // By hand: from (5, 0, 0) to (8, 0, 4).
        Assert.Equal(5, Segments3.Distance(new(-5, 0, 0), new(5, 0, 0), new(8, -5, 4), new(8, 5, 4)), 1e-12);

    [Fact]
    public void Distance_RandomSegments_NoPairOfPointsIsNearer() => Gen.Select(Point, Point, Point, Point).Sample((a, b, c, d) =>
    {
        var distance = Segments3.Distance(a, b, c, d);

        double[] shares = [.. Enumerable.Range(0, 41).Select(i => i / 40.0)];
        var sampled = shares.SelectMany(s => shares.Select(t => Point3.Distance(Point3.Between(a, b, s), Point3.Between(c, d, t)))).Min();
        // A step of a fortieth of the longest segment, 346 mm, to either side.
        Assert.InRange(distance, sampled - 9, sampled + 1e-9);
    });
}
