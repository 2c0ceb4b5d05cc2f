using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public class BoxClipTests
{
    private static readonly Box2 Box = new(new Point2(0, 0), new Point2(10, 5));

    private static readonly Gen<Point2> AnyPoint = Gen.Select(Gen.Double[-15, 25], Gen.Double[-15, 20], (x, y) => new Point2(x, y));

    [Fact]
    public void Within_LineThatLeavesAndComesBack_TwoParts()
    {
        // By hand: in through the left side, out through the top, back in through the top at x = 8.
        var parts = BoxClip.Within(Box, [new(-2, 2), new(4, 2), new(4, 8), new(8, 8), new(8, 1)]);

        Assert.Equal(2, parts.Length);
        Assert.Equal([new Point2(0, 2), new Point2(4, 2), new Point2(4, 5)], parts[0].AsEnumerable());
        Assert.Equal([new Point2(8, 5), new Point2(8, 1)], parts[1].AsEnumerable());
    }

    [Fact]
    public void Within_LineAlongTheRim_IsKept() => Assert.Equal((new Point2(2, 5), new Point2(10, 5)), BoxClip.Within(Box, new Point2(2, 5), new Point2(12, 5)));

    [Fact]
    public void Within_LineThatTouchesACorner_IsLeftOut() => Assert.Null(BoxClip.Within(Box, new Point2(-1, 4), new Point2(1, 6)));

    [Fact]
    public void Within_AnyStep_PointsAreKeptExactlyWhenTheyLieInside() => Gen.Select(AnyPoint, AnyPoint, Gen.Double[0, 1]).Sample((from, to, share) =>
    {
        var point = Point2.Between(from, to, share);
        var (x, y) = (System.Math.Min(point.X, 10 - point.X), System.Math.Min(point.Y, 5 - point.Y));
        var inside = System.Math.Min(x, y);
        var part = BoxClip.Within(Box, from, to);
        var isKept = part is { } kept && Segments.Distance(kept.From, kept.To, point) < 1e-9;
        // Points within rounding of the rim may be either.
        return System.Math.Abs(inside) < 1e-6 || isKept == inside > 0;
    });
}
