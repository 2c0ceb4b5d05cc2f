using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Pieces;

public class StoppedEdgeTests
{
    [Theory]
    [InlineData(MakeUpForm.Felled, 15)]
    [InlineData(MakeUpForm.FolderFelled, 12)]
    public void Finish_StoppingSeams_CutLineStepsInAtThirtyMillimetres(MakeUpForm form, double width)
    {
        // By hand: between hubs a strip a x (L - 60) and two of w x 30; corners are kites of plain seams, w^2 (1 - cos f) / sin f.
        var set = Jobs.Pieces(Stopping(form, width)).Finishing.Set;
        var facets = set.Patterns.Where(pattern => pattern.Runs.All(run => run.Role == EdgeRole.Seam)).ToArray();

        Assert.NotEmpty(facets);
        Assert.All(facets, pattern =>
        {
            var strips = pattern.Runs.Sum(run => (run.AllowanceMm * (run.LengthMm - 60)) + (width * 60));
            var expected = Rings.SignedArea(pattern.SewLine) + strips + pattern.Runs.Sum(run => width * width * Math.Tan(Turn(pattern, run) / 2));
            Assert.Equal(expected, Rings.SignedArea(pattern.CutLine), Rings.Perimeter(pattern.CutLine) / 1024);
        });
    }

    [Fact]
    public void Finish_StoppingSeams_BearAStrokeAtEachStop()
    {
        var set = Jobs.Pieces(Stopping(MakeUpForm.Felled, 15)).Finishing.Set;

        foreach (var pattern in set.Patterns)
        {
            var strokes = pattern.Lines.Where(line => line.Purpose == "stop").ToArray();
            foreach (var run in pattern.Runs.Where(run => run.MakeUp == "felled"))
            {
                var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
                var mine = strokes.Where(line => Lines.Distance(from, to, line.Path[0]) < 0.002 && IsBetween(from, to, line.Path[0])).ToArray();
                Assert.Contains(mine, line => Math.Min(Point2.Distance(from, line.Path[0]), Point2.Distance(to, line.Path[0])) is > 29.998 and < 30.002);
                Assert.All(mine, line => Assert.Equal(15, Point2.Distance(line.Path[0], line.Path[1]), 0.002));
            }
        }
    }

    /// <summary>Below the five low hubs, 4.83 mm under the deck (own calculation), the upright is 55 mm long: 25 are left, too little to fell.</summary>
    [Fact]
    public void Shorten_UprightsOfTheSkirt_AreSewnPlain()
    {
        var job = Stopping(MakeUpForm.Felled, 15);
        var shell = Jobs.Shell(job);

        var cut = HubStops.Shorten(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));

        var plain = cut.Arcs.Where(arc => arc.MakeUp is { Form: MakeUpForm.Plain }).ToArray();
        Assert.Equal(5, plain.Length);
        Assert.All(plain, arc => Assert.True(arc.LengthMm < 60 && arc.MakeUp!.OverMm == 15 && arc.MakeUp.UnderMm == 15));
        Assert.Equal(cut.Arcs.AsEnumerable(), HubStops.Shorten(job, shell, cut).Arcs.AsEnumerable());
    }

    [Fact]
    public void Shorten_LongDrop_LeavesUprightsFelledAtTheFoot()
    {
        var job = Stopping(MakeUpForm.Felled, 15) with { Skirt = new SkirtWish(Jobs.Mm(200)) };
        var (_, _, finishing) = Jobs.Pieces(job);

        Assert.Empty(finishing.Faults);
        Assert.DoesNotContain(finishing.Set.Patterns.SelectMany(pattern => pattern.Runs), run => run.MakeUp == "felled sewn plain");
    }

    [Theory]
    [InlineData(2, 2000, 12)]
    [InlineData(4, 2500, 20)]
    [InlineData(3, 3657.6, 25)]
    public void Finish_StoppingSeams_ManySizesWithoutFault(int frequency, double radius, double width)
    {
        foreach (var (drop, depth) in new[] { (0, 25), (60, 38), (100, 60), (160, 38), (250, 60) })
        {
            var job = Stopping(MakeUpForm.Felled, width) with { Skirt = new SkirtWish(Jobs.Mm(drop)), Hem = new HemWish(Jobs.Mm(depth), Jobs.Mm(12)) };
            job = job with { Frame = job.Frame with { Frequency = frequency, Rows = (2 * frequency) - 1, Size = Jobs.Mm(radius) } };

            Assert.Empty(Jobs.Pieces(job).Finishing.Faults);
        }
    }

    private static Job Stopping(MakeUpForm form, double width) =>
        Jobs.Dome(3, 5, 3657.6) with { Seam = SeamWish.Of(form, Jobs.Mm(width)) with { StopAtHubs = true } };

    private static double Turn(Pattern pattern, EdgeRun run)
    {
        var count = pattern.SewLine.Length;
        var (before, corner, after) = (pattern.SewLine[(run.From + count - 1) % count], pattern.SewLine[run.From], pattern.SewLine[run.To]);
        return Math.Atan2(Point2.Cross(corner - before, after - corner), Point2.Dot(corner - before, after - corner));
    }

    private static bool IsBetween(Point2 from, Point2 to, Point2 point) => Point2.Dot(point - from, to - point) > 0;
}
