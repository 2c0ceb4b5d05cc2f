using System.Collections.Immutable;
using CoverPattern.Files.Jobs;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class SampleTests
{
    [Theory]
    [MemberData(nameof(SampleJobs.Names), MemberType = typeof(SampleJobs))]
    public void Read_Sample_HasNoFault(string name) => Assert.Empty(JobReader.Read(SampleJobs.Text(name)).Faults);

    // The form as the samples' comments tell it; millimetres by hand.
    [Theory]
    [InlineData("orchard-5m.json", 3, 5, FrameMeasure.Diameter, 5000, MakeUpForm.Plain)]
    [InlineData("meadow-24ft.json", 3, 5, FrameMeasure.Diameter, 7315.2, MakeUpForm.Plain)]
    [InlineData("garden-2v.json", 2, 3, FrameMeasure.FloorDiameter, 4000, MakeUpForm.Felled)]
    [InlineData("market-4v.json", 4, 7, FrameMeasure.Height, 3200, MakeUpForm.Welded)]
    public void Read_Sample_HoldsItsFrame(string name, int frequency, int rows, FrameMeasure measure, double size, MakeUpForm makeUp)
    {
        var job = JobReader.Read(SampleJobs.Text(name)).Job!;

        Assert.Equal((frequency, rows, measure, size), (job.Frame.Frequency, job.Frame.Rows, job.Frame.Measure, job.Frame.Size.Millimetres));
        Assert.Equal(makeUp, job.Seam.MakeUp.Form);
    }

    [Theory]
    [MemberData(nameof(SampleJobs.Names), MemberType = typeof(SampleJobs))]
    public void Read_Sample_EveryPieceFitsTheRollAlongItsGrain(string name)
    {
        var job = JobReader.Read(SampleJobs.Text(name)).Job!;

        foreach (var pattern in Patterns(job))
        {
            var box = Rings.Bounds(pattern.CutLine);
            Assert.InRange(box.Height, 0, job.Cloths[0].UsableWidth);
        }
    }

    private static ImmutableArray<Pattern> Patterns(Job job)
    {
        var shell = ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));
        var cut = HubStops.Shorten(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));
        return PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut)).Set.Patterns;
    }
}
