using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Pieces;

public class WeldLinesTests
{
    // Two grid steps.
    private const double SamePlace = 0.002;

    [Theory]
    [InlineData(MakeUpForm.Welded, 40, 0)]
    [InlineData(MakeUpForm.SplitWelded, 40, 20)]
    public void Finish_Weld_DrawsTheOtherEdgeOnTheSidesThatNeedIt(MakeUpForm form, double width, double inside)
    {
        foreach (var pattern in Patterns(SeamWish.Of(form, Jobs.Mm(width))))
        {
            var needed = pattern.Runs.Where(run => run.Role == EdgeRole.Seam && (run.Side == EdgeSide.Under || form == MakeUpForm.SplitWelded)).ToArray();

            var lines = pattern.Lines.Where(line => line.Purpose == WeldLines.Line).ToArray();

            Assert.Equal(needed.Length, lines.Length);
            Assert.All(needed.Zip(lines), pair => Assert.All(pair.Second.Path, point => Assert.Equal(inside, Inside(pattern, pair.First, point), SamePlace)));
            Assert.All(pattern.Notches, notch => Assert.Equal(NotchForm.Tick, notch.Form));
        }
    }

    [Theory]
    [InlineData(MakeUpForm.Welded)]
    [InlineData(MakeUpForm.SplitWelded)]
    public void Finish_Weld_EndsBeyondTheJointOrWhereTheClothEnds(MakeUpForm form)
    {
        foreach (var pattern in Patterns(SeamWish.Of(form, Jobs.Mm(40))))
        {
            var needed = pattern.Runs.Where(run => run.Role == EdgeRole.Seam && (run.Side == EdgeSide.Under || form == MakeUpForm.SplitWelded)).ToArray();
            var ends = new List<Point2>();
            foreach (var (run, line) in needed.Zip(pattern.Lines.Where(line => line.Purpose == WeldLines.Line)))
            {
                // 30 mm beyond either end of the joint (common practice, no source), or 1 mm within the cloth's edge.
                var (from, along) = (pattern.SewLine[run.From], (pattern.SewLine[run.To] - pattern.SewLine[run.From]).Unit());
                Assert.All(line.Path.Zip(new[] { -30, run.LengthMm + 30 }), end =>
                {
                    var isBeyond = Math.Abs(Point2.Dot(end.First - from, along) - end.Second) < SamePlace;
                    Assert.True(isBeyond || EdgeDistance(pattern, end.First) < 1 + SamePlace);
                    Assert.True(ExactPredicates.Locate(Rings.ToSteps(pattern.CutLine), Grid.ToSteps(end.First)) > 0);
                    if (isBeyond)
                    {
                        ends.Add(end.First);
                    }
                });
            }

            var strokes = pattern.Lines.Where(line => line.Purpose == WeldLines.End).ToArray();
            Assert.Equal(ends.Count, strokes.Length);
            Assert.All(ends.Zip(strokes), pair => Assert.Equal(0, Lines.Distance(pair.Second.Path[0], pair.Second.Path[1], pair.First), SamePlace));
        }
    }

    /// <summary>A dome without stand-off and drop whose weld line meets the cut line in a corner: it ran 20 mm out of the cloth (found by the assembler).</summary>
    [Fact]
    public void Finish_WeldLineThroughACornerOfTheCutLine_StaysOnTheCloth() =>
        AssertOnCloth(2, 2, 5655.169960089359, 0, MakeUp.Of(MakeUpForm.Welded, Jobs.Mm(29.518744297169732)));

    [Fact]
    public void Finish_RandomWeld_StaysOnTheCloth() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 14], Gen.Double[2000, 8000], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60]), Gen.Bool).Sample(
            (frequency, rows, radius, drop, isSplit) => AssertOnCloth(
                frequency, Math.Min(rows, (3 * frequency) - 1), radius, drop, MakeUp.Of(isSplit ? MakeUpForm.SplitWelded : MakeUpForm.Welded, Jobs.Mm(radius / (150 * frequency)))),
            iter: 60);

    [Theory]
    [InlineData(MakeUpForm.Plain)]
    [InlineData(MakeUpForm.Lapped)]
    [InlineData(MakeUpForm.Felled)]
    [InlineData(MakeUpForm.Bound)]
    public void Finish_Sewn_DrawsNone(MakeUpForm form) =>
        Assert.All(Patterns(SeamWish.Of(form, Jobs.Mm(20))), pattern => Assert.DoesNotContain(pattern.Lines, line => line.Purpose is WeldLines.Line or WeldLines.End));

    private static void AssertOnCloth(int frequency, int rows, double radius, double drop, MakeUp makeUp)
    {
        var job = Jobs.Dome(frequency, rows, radius, standOff: 0) with { Seam = new SeamWish(makeUp), Skirt = new SkirtWish(Jobs.Mm(drop)) };
        foreach (var pattern in Jobs.Pieces(job).Finishing.Set.Patterns)
        {
            var cut = Rings.ToSteps(pattern.CutLine);
            Assert.All(pattern.Lines.SelectMany(line => line.Path), point => Assert.True(
                ExactPredicates.Locate(cut, Grid.ToSteps(point)) >= 0 || EdgeDistance(pattern, point) <= SamePlace));
        }
    }

    private static double Inside(Pattern pattern, EdgeRun run, Point2 point)
    {
        var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
        return Point2.Cross((to - from).Unit(), point - from);
    }

    private static double EdgeDistance(Pattern pattern, Point2 point) =>
        pattern.CutLine.Select((corner, i) => Segments.Distance(corner, pattern.CutLine[(i + 1) % pattern.CutLine.Length], point)).Min();

    private static ImmutableArray<Pattern> Patterns(SeamWish seam) => Jobs.Pieces(Jobs.Dome(3, 5, 3657.6) with { Seam = seam }).Finishing.Set.Patterns;
}
