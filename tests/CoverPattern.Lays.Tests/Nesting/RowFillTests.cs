using System;
using System.Linq;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

public sealed class RowFillTests
{
    // Row lengths of the best one- or two-block arrangements of single-kind rows in closed form, metres to one
    // decimal: own calculation from the formulas in the remarks of RowFill, 3V 5/8, allowance 15 mm, spacing 3 mm.
    [Theory]
    [InlineData(2500, 1350, false, 57.2)]
    [InlineData(2500, 1480, false, 57.2)]
    [InlineData(2500, 1800, false, 40.5)]
    [InlineData(2500, 2000, false, 29.3)]
    [InlineData(3660, 1480, false, 82.2)]
    [InlineData(3660, 1800, false, 82.2)]
    [InlineData(3660, 2000, false, 82.2)]
    [InlineData(2500, 1350, true, 54.8)]
    [InlineData(2500, 1800, true, 40.5)]
    [InlineData(2500, 2000, true, 28.1)]
    [InlineData(3660, 1350, true, 80.0)]
    [InlineData(3660, 1480, true, 78.8)]
    public void Fill_DomeTriangles_IsNoLongerThanClosedForm(double radius, double width, bool isFree, double metres)
    {
        var task = Outlines.Dome(radius, width, isFree ? AllowedTurns.Free : AllowedTurns.HalfTurn);

        var layout = RowFill.Fill(task);

        Assert.Empty(LayoutCheck.Check(task, layout));
        Assert.InRange(layout.Length / 1000, 0, metres + 0.05);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(30)]
    public void Fill_EqualTrianglesInARowOfTheirHeight_IsTheClosedForm(int copies)
    {
        // Isosceles: length = a + (n - 1) (a / 2 + s / cos(half apex)), apex 2 atan(a / 2 h); own derivation.
        var (baseLength, height, spacing) = (600.0, 500.0, 4.0);
        var triangle = Outlines.Triangle(baseLength, Math.Sqrt((baseLength * baseLength / 4) + (height * height)), 0);
        var task = new NestingTask(height, spacing, [Outlines.Item(triangle, copies, AllowedTurns.HalfTurn)], Effort: 1, Seed: 1);

        var layout = RowFill.Fill(task);

        var expected = baseLength + ((copies - 1) * ((baseLength / 2) + (spacing / Math.Cos(Math.Atan(baseLength / 2 / height)))));
        // Snapping and the safety step of the spacing cost a few steps of 0.001 mm a copy.
        Assert.InRange(layout.Length, expected - 0.002, expected + (0.004 * copies));
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    [Fact]
    public void Fill_UnevenTriangles_HasThePairPitch()
    {
        // Pair pitch p = a + s / sin b + s / sin c; base 500, apex foot at 100, height 300: b = atan 3, c = atan 0.75.
        var task = Uneven(21, AllowedTurns.HalfTurn);

        var layout = RowFill.Fill(task);

        var pitch = 500 + (4 / Math.Sin(Math.Atan(3))) + (4 / Math.Sin(Math.Atan(0.75)));
        Assert.Equal((10 * pitch) + 500, layout.Length, tolerance: 0.1);
    }

    [Fact]
    public void Fill_OneWayTriangles_CannotInterlock()
    {
        // Translates side by side on a base line: pitch a + s each.
        var task = Uneven(21, AllowedTurns.None);

        var layout = RowFill.Fill(task);

        Assert.Equal((20 * 504) + 500, layout.Length, tolerance: 0.1);
        Assert.All(layout.Placements, placement => Assert.Equal(0, placement.TurnDegrees));
    }

    [Fact]
    public void Fill_TwoRowsFit_SharesThemEvenly()
    {
        // Two rows of 300 with 4 between: 604 wide; 20 copies: ten a row.
        var task = Uneven(20, AllowedTurns.HalfTurn) with { Width = 604 };

        var layout = RowFill.Fill(task);

        Assert.Equal(10, layout.Placements.Count(placement => placement.Shift.Y < 304 && (placement.TurnDegrees == 0 || placement.Shift.Y < 301)));
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    private static NestingTask Uneven(int copies, AllowedTurns turns) =>
        new(300, 4, [Outlines.Item([new(0, 0), new(500, 0), new(100, 300)], copies, turns)], Effort: 1, Seed: 1);
}
