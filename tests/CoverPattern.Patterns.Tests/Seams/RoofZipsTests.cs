using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class RoofZipsTests
{
    // A 3V 5/8 from row 4 up: ring 3 has ten hubs; at five of them the wall has inside corners of 230.7 degrees (docs/seams.md), at the others nearly none.
    private static readonly Job Dome = Jobs.Dome(3, 5, 3657.6) with { Roof = new RoofWish(Jobs.Mm(100), Jobs.Mm(750), Jobs.Mm(50)) { Row = 4 } };

    [Fact]
    public void Plan_SharpCorners_StopsAndStartsThere()
    {
        var (zips, shell) = Plan(Dome);

        Assert.Equal(["Z01", "Z02", "Z03", "Z04", "Z05"], zips.Select(zip => zip.Label));
        Assert.All(zips, zip => Assert.Equal(2, zip.Steps.Length));
        Assert.Equal(["H3.01", "H3.03", "H3.05", "H3.07", "H3.09"], zips.Select(zip => shell.Nodes[zip.From].Label));
        Assert.All(zips.Zip(zips.Skip(1).Append(zips[0])), pair => Assert.Equal(pair.First.To, pair.Second.From));
    }

    [Theory]
    // Ten struts of 1.52 m: one to a zip below 3.04 m, two up to 4.5 m, three up to 6 m, where four zips of 3, 3, 2, 2 are enough; all of them in one where it is long enough.
    [InlineData(3000, 150, 10, 1)]
    [InlineData(4000, 10, 5, 2)]
    [InlineData(5000, 10, 4, 3)]
    [InlineData(16000, 10, 1, 10)]
    public void Plan_LongestAndRadius_AsFewAsMayBe(double longest, double radius, int count, int most)
    {
        var (zips, _) = Plan(Dome with { Notions = Dome.Notions with { ZipLongest = Jobs.Mm(longest), ZipRadius = Jobs.Mm(radius) } });

        Assert.Equal(count, zips.Length);
        Assert.Equal(most, zips.Max(zip => zip.Steps.Length));
        Assert.Equal(10, zips.Sum(zip => zip.Steps.Length));
        Assert.All(zips, zip => Assert.True(zip.LengthMm <= longest));
    }

    [Theory]
    // By hand: 150 (1 / cos 10.25 - 1) = 2.43 and 150 (1 / cos 10.5 - 1) = 2.56; 10 (1 / cos 29.3 - 1) = 1.47.
    [InlineData(150, 20.5, false)]
    [InlineData(150, 21.0, true)]
    [InlineData(10, 58.6, false)]
    public void MustStop_Corner_WhereAnArcLeavesItTooFar(double radius, double degrees, bool stops) =>
        Assert.Equal(stops, RoofZips.MustStop(radius, degrees * Math.PI / 180));

    [Fact]
    public void TurnAt_CornersOfTheTopPentagon_IsThatOfTheSideWhereItIsMore()
    {
        var job = Dome with { StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)), Roof = Dome.Roof! with { Row = 5 } };
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var line = RoofLine.Find(job, frame, shell)!;

        // Chords of the 3V [Clinton 1971] 0.34862 and 0.40355: two base angles of acos(0.40355 / 2 / 0.34862) = 54.635 degrees on the roof; on the wall a hub's defect less.
        Assert.Equal(180 - (2 * 54.635), RoofZips.TurnAt(shell, line, line.Loops[0][0].From) * 180 / Math.PI, 0.01);
    }

    [Fact]
    public void ZipIn_Line_RoofLiesOver()
    {
        var (frame, shell) = (FrameBuilder.Build(Dome.Frame), Jobs.Shell(Dome));
        var line = RoofLine.Find(Dome, frame, shell)!;

        var plan = line.ZipIn(SeamPlanner.Plan(Dome, shell, PanelPlan.SingleFacets(shell)));

        int[] zipped = [.. Enumerable.Range(0, plan.Edges.Length).Where(edge => plan.Edges[edge].MakeUp?.Name == RoofWish.ZipName)];
        Assert.Equal(10, zipped.Length);
        Assert.All(zipped, edge => Assert.Contains(plan.Edges[edge].Over, line.Faces));
    }

    private static (ImmutableArray<RoofZip> Zips, Shell Shell) Plan(Job job)
    {
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        return (RoofZips.Plan(job, shell, RoofLine.Find(job, frame, shell)!), shell);
    }
}
