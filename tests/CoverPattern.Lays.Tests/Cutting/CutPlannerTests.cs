using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Pieces;

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

    [Fact]
    public void Plan_PiercedMarks_HolesAreCutBeforeNotchesAndDrawnMarksAreNot()
    {
        var (lay, pieces) = LaidDome.Columns(2, 600);
        var marked = pieces with
        {
            Patterns =
            [
                .. pieces.Patterns.Select(pattern => pattern with
                {
                    Drills = [new DrillMark(new Point2(200, 100), "pivot", IsPierced: true), new DrillMark(new Point2(300, 100), "tie")],
                    Notches = [new Notch(0, 300, NotchForm.Slit, new Point2(300, 0), new Point2(300, 0), new Point2(300, 4))],
                }),
            ],
        };

        var plan = CutPlanner.Plan(lay, marked, []);

        // Four pieces, each a hole, a slit and its outline; nothing is cut at the mark that is drawn.
        Assert.Equal(
            [.. Enumerable.Repeat(new[] { StrokeUse.Pierce, StrokeUse.Notch, StrokeUse.Outline }, 4).SelectMany(uses => uses)],
            plan.Strokes.Select(stroke => stroke.Use));
        Assert.All(plan.Strokes.Where(stroke => stroke.Use == StrokeUse.Pierce), stroke => Assert.Equal((stroke.Start, "pivot"), (stroke.End, stroke.Purpose)));
    }

    private static string[] Keys(CutPlan plan) =>
    [
        .. plan.Strokes.Select(stroke => FormattableString.Invariant($"{stroke.Piece} {stroke.Use} {stroke.Purpose} {stroke.Length:F3}")).Order(StringComparer.Ordinal),
    ];
}
