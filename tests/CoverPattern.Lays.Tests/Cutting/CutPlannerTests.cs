using System;
using System.Collections.Generic;
using System.Collections.Immutable;
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

    [Theory]
    [InlineData(3, 5, 2500, false)]
    [InlineData(2, 3, 2000, true)]
    [Trait("Category", "Long")]
    public void Plan_Dome_TravelsAtMostATenthFartherThanALongSearch(int frequency, int rows, double radius, bool hasMarks)
    {
        var (lay, pieces) = LaidDome.Make(frequency, rows, radius);

        var plan = CutPlanner.Plan(lay, pieces, hasMarks ? LaidDome.Marks(lay, pieces) : []);

        var shortest = Enumerable.Range(1, 2).Min(seed => TravelReference.Shortest(plan, 400_000, seed));
        Assert.True(plan.IdleMm <= 1.1 * shortest, $"{plan.IdleMm:F0} mm, the long search {shortest:F0} mm");
    }

    [Fact]
    public void Plan_PiecesThatTouch_CommonEdgesAreCutOnce()
    {
        // Twelve boxes of 400 x 300 mm in two rows of six without a gap: by hand, 2400 mm and 5 x 600 mm are common to two.
        var (lay, pieces) = LaidDome.Columns(6, 400, gap: 0);

        var plan = CutPlanner.Plan(lay, pieces, []);

        Assert.Equal(12 * 1400, CutPlanner.AsPlaced(lay, pieces, []).CutMm, 6);
        Assert.Equal(2400 + (5 * 600), plan.SharedMm, 6);
        Assert.Equal((12 * 1400) - 5400, plan.CutMm, 6);
    }

    [Fact]
    public void Plan_PiecesThatTouch_EveryEdgeIsCutBySomebodyAndNoneTwice()
    {
        var (lay, pieces) = LaidDome.Columns(3, 400, gap: 0);

        var plan = CutPlanner.Plan(lay, pieces, []);

        var cuts = plan.Strokes.SelectMany(stroke => stroke.Points.Zip(stroke.Points.Skip(1))).ToArray();
        foreach (var step in CutPlanner.AsPlaced(lay, pieces, []).Strokes.SelectMany(stroke => stroke.Points.Zip(stroke.Points.Skip(1))))
        {
            // Points between corners, where one cut is right and two are not.
            Assert.All(Enumerable.Range(1, 9), i => Assert.Equal(1, cuts.Count(cut => Segments.Distance(cut.First, cut.Second, Point2.Between(step.First, step.Second, (i / 10.0) + 0.013)) < 0.001)));
        }
    }

    [Fact]
    public void Plan_TrianglesThatTouchAlongPartOfTheirEdges_OnlyThatPartIsCommon()
    {
        // Halves of the box of 400 x 300, one moved along their slope by a quarter of it: 375 of 500 mm are common.
        ImmutableArray<Point2> one = [new(0, 0), new(400, 0), new(400, 300), new(0, 0)];
        ImmutableArray<Point2> other = [new(100, 75), new(500, 375), new(100, 375), new(100, 75)];

        var left = CommonCuts.Left(new Stroke("P2", StrokeUse.Outline, "cut line", other), [one]);

        var stroke = Assert.Single(left);
        Assert.Equal(500 + 300 + 400 - 375, stroke.Length, 6);
        Assert.Equal(125, Point2.Distance(stroke.Points[0], stroke.Points[1]), 6);
    }

    [Fact]
    public void Plan_SpacingBetweenPieces_NothingIsCommon()
    {
        var (lay, pieces) = LaidDome.Make(2, 3, 2000);

        Assert.Equal(0, CutPlanner.Plan(lay, pieces, []).SharedMm, 9);
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
