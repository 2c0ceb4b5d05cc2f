using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;
using CsCheck;

namespace CoverPattern.Lays.Tests.Sheets;

public class TilePlannerTests
{
    // 190 x 277 mm shown of A4, 10 mm of them in common with the neighbour.
    private static readonly TileWish A4 = new(new SheetSize(210, 297));

    private static readonly Gen<Point2> AnyPoint = Gen.Select(Gen.Double[0, 3000], Gen.Double[0, 1500], (x, y) => new Point2(x, y));

    [Theory]
    // Half a millimetre stays free at each rim.
    [InlineData(189, 276, 1)]
    [InlineData(189.5, 276, 2)]
    [InlineData(369, 276, 2)]
    // Across: three of 190 and two of 277; upright 3 x 3, on their side 2 x 4.
    [InlineData(500, 700, 8)]
    public void Plan_FilledRectangle_TakesTheFewestSheets(double width, double height, int sheets)
    {
        // Lines a centimetre apart: no sheet is blank.
        var lines = Enumerable.Range(0, (int)(height / 10) + 1).Select(i => Line(0, Math.Min(height, i * 10), width, Math.Min(height, i * 10))).Append(Line(0, height, width, height));

        var plan = TilePlanner.Plan([.. lines], A4);

        Assert.Equal(sheets, plan.Tiles.Length);
    }

    [Fact]
    public void Plan_LongStripStandingUp_TurnsTheSheet()
    {
        // 1000 mm along: 5.5 steps of 180 upright are six sheets, 3.7 of 267 on their side four.
        var plan = TilePlanner.Plan([Line(0, 0, 1000, 0), Line(0, 150, 1000, 150)], A4);

        Assert.Equal(new SheetSize(297, 210), plan.Wish.Sheet);
        Assert.Equal(4, plan.Tiles.Length);
    }

    [Fact]
    public void Plan_Frame_LeavesTheMiddleOut()
    {
        var plan = TilePlanner.Plan([[new(0, 0), new(1900, 0), new(1900, 1900), new(0, 1900), new(0, 0)]], A4);

        Assert.True(plan.Tiles.Length < plan.Columns * plan.Rows / 2);
        Assert.Null(plan.At(plan.Columns / 2, plan.Rows / 2));
        Assert.Equal(Enumerable.Range(1, plan.Tiles.Length), plan.Tiles.Select(tile => tile.Number));
    }

    [Fact]
    public void Plan_AnyLines_EveryPointIsOnASheetAndNoSheetIsBlank() => Gen.Select(AnyPoint, AnyPoint).Array[1, 6].Sample(
        pairs =>
        {
            ImmutableArray<ImmutableArray<Point2>> lines = [.. pairs.Select(pair => ImmutableArray.Create(pair.Item1, pair.Item2))];

            var plan = TilePlanner.Plan(lines, A4);

            var points = lines.SelectMany(line => Enumerable.Range(0, 101).Select(i => Point2.Between(line[0], line[1], i / 100.0)));
            return points.All(point => plan.Tiles.Any(tile => Holds(tile.Area, point)))
                && plan.Tiles.All(tile => lines.Any(line => BoxClip.Within(tile.Area, line).Length > 0));
        },
        iter: 200);

    [Fact]
    public void Plan_SheetWithoutRoomForTheSquare_Refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TilePlanner.Plan([Line(0, 0, 10, 0)], new TileWish(new SheetSize(130, 400))));

    private static ImmutableArray<Point2> Line(double x, double y, double toX, double toY) => [new(x, y), new(toX, toY)];

    private static bool Holds(Box2 box, Point2 point) =>
        point.X >= box.Low.X - 1e-6 && point.X <= box.High.X + 1e-6 && point.Y >= box.Low.Y - 1e-6 && point.Y <= box.High.Y + 1e-6;
}
