using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Lays.Cutting;

namespace CoverPattern.Lays.Tests.Cutting;

public class CutPlannerTests
{
    [Theory]
    [InlineData(3, 5, 2500)]
    [InlineData(4, 7, 3000)]
    [InlineData(2, 3, 2000)]
    public void Plan_Dome_TravelsFarLessThanInOrderOfPlacement(int frequency, int rows, double radius)
    {
        var (lay, pieces) = LaidDome.Make(frequency, rows, radius);

        var plan = CutPlanner.Plan(lay, pieces, []);

        Assert.True(plan.IdleMm < 0.6 * CutPlanner.AsPlaced(lay, pieces, []).IdleMm, $"{plan.IdleMm:F0} of {CutPlanner.AsPlaced(lay, pieces, []).IdleMm:F0} mm");
    }

    [Fact]
    public void Plan_Dome_DoesEveryStrokeOnceAndTheOutlineLast()
    {
        var (lay, pieces) = LaidDome.Make(3, 5, 2500);

        var plan = CutPlanner.Plan(lay, pieces, []);

        var placed = CutPlanner.AsPlaced(lay, pieces, []);
        Assert.Equal(placed.Strokes.Length, plan.Strokes.Length);
        Assert.Equal(placed.CutMm, plan.CutMm, 6);
        Assert.Equal(placed.DrawnMm, plan.DrawnMm, 6);
        Assert.Equal(Keys(placed), Keys(plan));
        var done = new HashSet<string>(StringComparer.Ordinal);
        var last = StrokeUse.Draw;
        foreach (var stroke in plan.Strokes)
        {
            Assert.DoesNotContain(stroke.Piece, done);
            Assert.True(stroke.Use >= last);
            last = stroke.Use;
            if (stroke.Use == StrokeUse.Outline)
            {
                done.Add(stroke.Piece);
                last = StrokeUse.Draw;
            }
        }

        Assert.Equal(lay.Placements.Length, done.Count);
    }

    private static string[] Keys(CutPlan plan) =>
    [
        .. plan.Strokes.Select(stroke => FormattableString.Invariant($"{stroke.Piece} {stroke.Use} {stroke.Purpose} {stroke.Length:F3}")).Order(StringComparer.Ordinal),
    ];
}
