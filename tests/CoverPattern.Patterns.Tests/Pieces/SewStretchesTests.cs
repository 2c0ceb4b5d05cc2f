using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Pieces;

public class SewStretchesTests
{
    private static readonly ImmutableArray<Point2> Square = [new(0, 0), new(100, 0), new(100, 100), new(0, 100)];

    [Fact]
    public void Of_EdgeShortOfItsLine_IsLeftOutAndTheRestEndsAtTheCutLine()
    {
        // A square of 100 mm; its left edge ends 5 mm short, bound beside a zip, the others have 20 mm more.
        var pattern = Pattern([new(5, -20), new(120, -20), new(120, 120), new(5, 120)], -5);

        var line = Assert.Single(SewStretches.Of(pattern));

        Assert.Equal([new(5, 0), new(100, 0), new(100, 100), new(5, 100)], line.AsEnumerable());
    }

    [Fact]
    public void Of_AllowancesAllRound_IsTheWholeRing() =>
        Assert.Equal(Square.Add(Square[0]).AsEnumerable(), Assert.Single(SewStretches.Of(Pattern([new(-20, -20), new(120, -20), new(120, 120), new(-20, 120)], 20))).AsEnumerable());

    private static Pattern Pattern(ImmutableArray<Point2> cut, double left)
    {
        var any = Jobs.Pieces(Jobs.Dome(1, 2, 1000)).Finishing.Set.Patterns[0];
        return any with
        {
            SewLine = Square,
            CutLine = cut,
            Runs = [.. Enumerable.Range(0, 4).Select(i => any.Runs[0] with { From = i, To = (i + 1) % 4, Role = EdgeRole.Rim, AllowanceMm = i == 3 ? left : 20 })],
        };
    }
}
