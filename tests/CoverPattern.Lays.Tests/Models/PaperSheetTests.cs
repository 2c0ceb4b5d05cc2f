using System;
using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Lays.Models;

namespace CoverPattern.Lays.Tests.Models;

public class PaperSheetTests
{
    [Fact]
    public void Core_Triangle_IsTheLargestSquareOfItsCells()
    {
        // A right triangle of legs 100 holds a square of half the leg, its corner in the right angle; cells near the rim count too, 0.75 mm and a cell.
        var square = CellSquare.In(CellMask.Of([Triangle(new(0, 0), new(100, 0), new(0, 100))]));

        Assert.InRange(square.Side, 50, 53);
        Assert.InRange(square.X - square.Side, -2, 2);
    }

    // The quick check may let places through, but must never refuse one that is free.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void MayHold_AnyFreePlace_IsTold(int seed)
    {
        var random = new Random(seed);
        Point2 Any(int reach) => new(random.Next(reach), random.Next(reach));
        var sheet = new PaperSheet(150, 120);
        var (free, refused) = (0, 0);
        for (var i = 0; i < 8; i++)
        {
            var turn = CellMask.Of([Triangle(Any(60), Any(60), Any(60))]);
            var core = CellSquare.In(turn);
            (int X, int Y)? place = null;
            for (var x = 0; x + turn.Width <= sheet.Width; x++)
            {
                var moved = turn.MovedRight(x, sheet.WordsPerRow);
                for (var y = 0; y + turn.Height <= sheet.Height; y++)
                {
                    var (isFree, may) = (sheet.IsFree(moved, y), sheet.MayHold(core, x, y));
                    Assert.True(may || !isFree, $"{x}, {y}");
                    place ??= isFree ? (x, y) : null;
                    free += isFree ? 1 : 0;
                    refused += may ? 0 : 1;
                }
            }

            if (place is { } taken)
            {
                sheet.Take(turn.MovedRight(taken.X, sheet.WordsPerRow), taken.Y);
            }
        }

        Assert.InRange(free, 1, int.MaxValue);
        Assert.InRange(refused, 1, int.MaxValue);
    }

    private static ImmutableArray<Point2> Triangle(Point2 a, Point2 b, Point2 c) => Rings.SignedArea([a, b, c]) >= 0 ? [a, b, c] : [a, c, b];
}
