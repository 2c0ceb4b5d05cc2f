using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Openings;

public class VentSheetTests
{
    [Fact]
    public void Of_CircleAndRectangle_HaveTheirAreasAndHeights()
    {
        var job = Opened();
        var (sheet, shell) = Sheet(job);

        // By hand: 0.4 x 0.3 m2; pi 0.15^2 m2, half of it through the mesh.
        Assert.Equal(0.12, sheet.LowM2, 1e-6);
        Assert.Equal(Math.PI * 0.15 * 0.15 / 2, sheet.HighM2, 1e-6);
        Assert.Equal(Math.PI * 0.15 * 0.15, sheet.High[0].OpenMm2 / 1e6, 1e-6);
        // A rectangle carried in one facet has its middle where it was placed.
        var middle = Middle(shell, "F4.02") - Middle(shell, "F1.05");
        Assert.Equal(middle, sheet.HeightMm, 1e-6);
    }

    [Theory]
    [InlineData("O9", "the label of an opening: O1, O2")]
    [InlineData("O1", "each opening once")]
    public void Faults_WrongLabels_AreTold(string high, string allowed)
    {
        var job = Opened() with { Vents = new VentWish(["O1"], [high], 0.5) };

        var fault = Assert.Single(VentSheet.Faults(job, OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Jobs.Shell(job))));

        Assert.Equal("vents.high[0]", fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_SheetSewnIn_NeverOpens()
    {
        var job = Opened();
        job = job with { Openings = [job.Openings[0] with { Sheet = job.Cloths[0].Name, Lap = Jobs.Mm(20) }, job.Openings[1]] };

        var fault = Assert.Single(VentSheet.Faults(job, OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Jobs.Shell(job))));

        Assert.Equal(("vents.low[0]", "\"O1\", whose sheet is sewn in"), (fault.Place, fault.Said));
    }

    private static double Middle(CoverPattern.Patterns.Shells.Shell shell, string label)
    {
        var face = shell.Faces.Single(face => face.Label == label);
        var corners = face.Nodes.Select(node => shell.Nodes[node].Position).ToArray();
        double[] facing = [(corners[1] - corners[2]).Length, (corners[2] - corners[0]).Length, (corners[0] - corners[1]).Length];
        return facing.Zip(corners).Sum(pair => pair.First * pair.Second.Z) / facing.Sum();
    }

    private static Job Opened() => Jobs.Dome(3, 5, 3657.6) is var job
        ? job with
        {
            Openings =
            [
                new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = Jobs.Mm(400), Height = Jobs.Mm(300) }, new OpeningPlace("F1.05", default, default), LayingRule.Carried, Jobs.Mm(15)),
                new OpeningWish(new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(300) }, new OpeningPlace("F4.02", default, default), LayingRule.Carried, Jobs.Mm(15)) { Screen = job.Cloths[0].Name, Lap = Jobs.Mm(20) },
            ],
            Vents = new VentWish(["O1"], ["O2"], 0.5),
        }
        : null!;

    private static (VentSheet Sheet, CoverPattern.Patterns.Shells.Shell Shell) Sheet(Job job)
    {
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var openings = OpeningLayer.Lay(job, frame, shell);
        Assert.Empty(openings.Faults);
        Assert.Empty(VentSheet.Faults(job, openings));
        return (VentSheet.Of(job.Vents!, shell, openings, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), openings.Regions)), shell);
    }
}
