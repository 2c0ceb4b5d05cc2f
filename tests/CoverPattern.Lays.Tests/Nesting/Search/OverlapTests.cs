using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

public class OverlapTests
{
    private static readonly ImmutableArray<Point2> Square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];

    // Expected values: seen from the drawing.
    [Theory]
    [InlineData(0, 0, true)]
    [InlineData(10, 0, false)]
    [InlineData(10, 10, false)]
    [InlineData(9.9990234375, 0, true)]
    [InlineData(5, 0, true)]
    [InlineData(-10, 3, false)]
    public void Exists_TwoSquares_TouchingIsNoOverlap(double x, double y, bool overlap)
    {
        var (shape, shift) = (Prepare(Square), Grid.ToSteps(new Point2(x, y)));

        var found = Overlap.Exists(shape, shape, shift.X, shift.Y);

        Assert.Equal(overlap, found);
    }

    [Fact]
    public void Exists_PieceInHole_IsApart()
    {
        var task = new NestingTask(100, 0, [RandomOutlines.Frame(20, 10, 1), RandomOutlines.Item(Square, 1, AllowedTurns.None)], 1, 1);
        var shapes = ShapePreparer.Prepare(task);

        // The hole spans 5 to 15: the square fits exactly, touching all round.
        var fitting = Overlap.Exists(shapes[0][0], shapes[1][0], 5 * 1024, 5 * 1024);
        var off = Overlap.Exists(shapes[0][0], shapes[1][0], (5 * 1024) + 1, 5 * 1024);

        Assert.False(fitting);
        Assert.True(off);
    }

    [Fact]
    public void Exists_NotchFilledExactly_IsApart()
    {
        // An L and the square that fills its inside corner: every corner of the square lies on the L or on its hull.
        var stairs = Prepare([new(0, 0), new(20, 0), new(20, 10), new(10, 10), new(10, 20), new(0, 20)]);
        var square = Prepare(Square);

        Assert.False(Overlap.Exists(stairs, square, 10 * 1024, 10 * 1024));
        Assert.True(Overlap.Exists(stairs, square, (10 * 1024) - 1, 10 * 1024));
    }

    [Fact]
    public void Exists_TwoThousandPoses_AgreesWithGeometryLibrary() => Compare(2_000, seed: 1);

    [Fact]
    [Trait("Category", "Long")]
    public void Exists_MillionPoses_AgreesWithGeometryLibrary() => Compare(1_000_000, seed: 2);

    [Fact]
    public void PairTable_RandomShifts_NeverContradictsExactAnswer()
    {
        var chance = new Chance(3, 0);
        for (var pair = 0; pair < 40; pair++)
        {
            var (a, b) = (Prepare(RandomRing(chance)), Prepare(RandomRing(chance)));
            var table = new PairTable(a, b, 32);
            for (var k = 0; k < 500; k++)
            {
                var x = chance.Between(a.Box.Left - b.Box.Right + 1, a.Box.Right - b.Box.Left - 1);
                var y = chance.Between(a.Box.Bottom - b.Box.Top + 1, a.Box.Top - b.Box.Bottom - 1);

                var look = table.Look(x, y);

                Assert.True(look == PairTable.Unsure || look != PairTable.Apart == Overlap.Exists(a, b, x, y), FormattableString.Invariant($"pair {pair} at {x}, {y}"));
                Assert.True(table.Least(look) <= Severity.Of(a, b, x, y), FormattableString.Invariant($"pair {pair} at {x}, {y}: worse than it is"));
            }
        }
    }

    /// <summary>Compares on poses of 200 outlines, prepared once.</summary>
    private static void Compare(int poses, int seed)
    {
        var chance = new Chance(seed, 0);
        var items = Enumerable.Range(0, 200).Select(_ => RandomOutlines.Item(RandomRing(chance), 1, AllowedTurns.None)).ToArray();
        var shapes = items.Select(item => Prepare(item.Outline)).ToArray();
        var fixedPolygons = items.Select(item => NtsProof.ToPolygon(item, default)).ToArray();
        for (var k = 0; k < poses; k++)
        {
            var (left, right) = (chance.Below(items.Length), chance.Below(items.Length));
            // Every other shift is whole, so that staircases touch.
            var shift = k % 2 == 0
                ? new Point2(chance.Between(-6, 6), chance.Between(-6, 6))
                : Grid.Snap(new Point2((12 * chance.Unit()) - 6, (12 * chance.Unit()) - 6));
            var steps = Grid.ToSteps(shift);

            var found = Overlap.Exists(shapes[left], shapes[right], steps.X, steps.Y);

            var common = NtsProof.CommonArea(fixedPolygons[left], NtsProof.ToPolygon(items[right], new NestingPlacement(0, 0, shift)));
            // Below a millionth of a square millimetre the library's rounding may decide.
            Assert.True(found == common > 1e-8 || common is > 0 and < 1e-6, FormattableString.Invariant($"pose {k}: {found}, common area {common}"));
        }
    }

    private static ImmutableArray<Point2> RandomRing(Chance chance) =>
        chance.Below(2) == 0 ? RandomOutlines.Stairs(chance) : RandomOutlines.Star(chance, chance.Between(3, 30), chance.Between(2, 6));

    private static PreparedShape Prepare(ImmutableArray<Point2> outline) =>
        ShapePreparer.Prepare(new NestingTask(1000, 0, [RandomOutlines.Item(outline, 1, AllowedTurns.None)], 1, 1))[0][0];
}
