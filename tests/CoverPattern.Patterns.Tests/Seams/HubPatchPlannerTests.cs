using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class HubPatchPlannerTests
{
    [Fact]
    public void Plan_ThreeV_AllHubsSmallerAtTheBaseLargerAtTheTop()
    {
        var job = With(3657.6);
        var shell = Jobs.Shell(job);

        var patches = HubPatchPlanner.Plan(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));

        // 61 hubs. Base hubs stand at -4.83 and 53.93 mm (own calculation), the edge at -60: 55.17 and 113.93 less 10 mm.
        Assert.Equal(61, patches.Length);
        Assert.Equal([45.0, 90, 130], patches.Select(patch => patch.RadiusMm).Distinct().Order());
        Assert.Equal((5, 55, 1), (patches.Count(patch => patch.RadiusMm == 45), patches.Count(patch => patch.RadiusMm == 90), patches.Count(patch => patch.RadiusMm == 130)));
    }

    [Fact]
    public void Plan_SmallDome_TakesAtMostTwoFifthsOfTheShortestLine()
    {
        // The shortest strut at an inner hub is class A of the 3V, 0.34862 R (chord factor, own calculation): 0.4 of 209.2 mm.
        var job = With(600, standOff: 0);
        var shell = Jobs.Shell(job);

        var patches = HubPatchPlanner.Plan(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));

        Assert.Equal(83, patches.MaxBy(patch => patch.Hub, StringComparer.Ordinal)!.RadiusMm);
    }

    [Fact]
    public void Finish_Patches_ArcsLieRoundTheHubOnEveryPiece()
    {
        var set = Jobs.Pieces(With(3657.6)).Finishing.Set;

        foreach (var pattern in set.Patterns)
        {
            var arcs = pattern.Lines.Where(line => line.Purpose == "patch").ToArray();
            Assert.True(arcs.Length >= 3);
            foreach (var arc in arcs)
            {
                var hub = pattern.SewLine.MinBy(corner => Math.Abs(Point2.Distance(corner, arc.Path[0]) - Point2.Distance(corner, arc.Path[^1])) + Point2.Distance(corner, arc.Path[0]));
                var radius = Point2.Distance(hub, arc.Path[0]);
                Assert.Contains(radius, new[] { 45.0, 90, 130 }, new Near());
                Assert.All(arc.Path, point => Assert.Equal(radius, Point2.Distance(hub, point), 0.002));
            }
        }
    }

    [Fact]
    public void Finish_WeldWithoutAllowanceAtTheHub_ArcIsDrawnAllTheSame()
    {
        // From a random job: the over side of a weld has no allowance, so that the arc begins on the cut line, rounded to either side of it.
        var job = Jobs.Dome(1, 2, 5404.5888888888885, standOff: 0) with
        {
            Seam = SeamWish.Of(MakeUpForm.Welded, Jobs.Mm(64.17949305555555)),
            Marks = MarkWish.Bare with { HubPatches = HubPatchPlace.Outside, PatchDiameter = Jobs.Mm(180), ApexDiameter = Jobs.Mm(260) },
        };

        var set = Jobs.Pieces(job).Finishing.Set;

        // Every facet has a hub at each of its three corners.
        Assert.All(set.Patterns, pattern => Assert.True(pattern.Lines.Count(line => line.Purpose == "patch") >= 3));
    }

    [Fact]
    public void Plan_WindowNearAHub_PatchEndsShortOfItsRing()
    {
        // By hand: the incentre of AAB lies 658.2 mm below the top hub at R = 3657.6 mm and stand-off 0 (inscribed radius 381.2, half an
        // angle 35.4 degrees); an aperture of 560 moved 250 mm up has its ring end 315 mm from its middle: 93 mm to the hub, 83 clear.
        var (shell, cut) = Windowed(560, up: 250, hubRadius: 0);

        var patches = HubPatchPlanner.Plan(With(3657.6, 0), shell, cut);

        var window = cut.Patches.Single(patch => patch.Holes.Length > 0);
        var room = window.Corners.Select(corner => Point2.Distance(corner, window.Holes[0].Region.Centre.At) - 315 - 10).ToArray();
        var face = shell.Faces[window.Face];
        foreach (var (left, node) in room.Zip(face.Nodes))
        {
            var usual = shell.Nodes[node].Label == "H5.01" ? 130 : 90;
            Assert.Equal(Math.Min(usual, Math.Floor(left)), patches.Single(patch => patch.Hub == shell.Nodes[node].Label).RadiusMm);
        }

        Assert.Equal((61, 83), (patches.Length, patches.MaxBy(patch => patch.Hub, StringComparer.Ordinal)!.RadiusMm));
    }

    [Fact]
    public void Check_WindowMovedTowardsAHub_ReducesAndTellsThenRefuses()
    {
        // By hand: the top hub lies 658.2 mm above the incentre; a ring of 185 mm and 10 mm clear of it leave 163 mm at 300 mm up, 63 at 400, 23 at 440.
        string[] Codes(double up)
        {
            var (shell, cut) = Windowed(300, up, hubRadius: 0);
            return [.. HubPatchCheck.Notices(With(3657.6, 0), shell, cut).Select(notice => notice.Code)];
        }

        Fault[] Faults(double up)
        {
            var (shell, cut) = Windowed(300, up, hubRadius: 0);
            return [.. HubPatchCheck.Faults(With(3657.6, 0), shell, cut)];
        }

        Assert.Empty(Codes(300));
        Assert.Equal(["hub-patches-reduced"], Codes(400));
        Assert.Empty(Faults(400));
        var fault = Assert.Single(Faults(440));
        Assert.Equal(("marks.patchDiameter", "180 mm"), (fault.Place, fault.Said));
        Assert.Contains("room for a patch of 46 mm over hub H5.01", fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("the least is 70 mm", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_ZipsAlongTheRings_NoPatchOverTheirEnds()
    {
        var job = With(3657.6) with { Seam = With(3657.6).Seam with { Others = [new SeamChoice(SeamSet.Struts, ["H2.01-H2.02"], MakeUp.Of(MakeUpForm.Zip, Jobs.Mm(20)))] } };
        var shell = Jobs.Shell(job);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));

        var without = shell.Nodes.Select(node => node.Label).Where(label => !label.EndsWith('f')).Except(HubPatchPlanner.Plan(job, shell, cut).Select(patch => patch.Hub));

        Assert.Equal(["H2.01", "H2.02"], without.Order(StringComparer.Ordinal));
        Assert.Contains(HubPatchCheck.Notices(job, shell, cut), notice => notice.Code == "no-patch-over-zip" && notice.Text.StartsWith("2 hubs", StringComparison.Ordinal));
        Assert.Empty(HubPatchCheck.Faults(job, shell, cut));
    }

    private static (Shell Shell, Subdivision Cut) Windowed(double aperture, double up, double hubRadius)
    {
        var job = With(3657.6, 0);
        var windowed = job with
        {
            Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear" }, job.Cloths[0] with { Name = "mesh" }],
            Windows = [Jobs.Window(aperture) with { Facets = ["F5.1"], Up = Jobs.Mm(up) }],
            StandOff = job.StandOff with { HubRadius = Jobs.Mm(hubRadius) },
        };
        var shell = Jobs.Shell(windowed);
        var label = shell.Faces.First(face => face.Label is "F5.1" or "F5.01").Label;
        var laid = OpeningLayer.Lay(windowed with { Windows = [windowed.Windows[0] with { Facets = [label] }] }, FrameBuilder.Build(windowed.Frame), shell);
        return (shell, Subdivider.Cut(shell, SeamPlanner.Plan(windowed, shell, PanelPlan.SingleFacets(shell)), laid.Regions));
    }

    private static Job With(double radius, double standOff = 25) => Jobs.Dome(3, 5, radius, standOff) with
    {
        Marks = MarkWish.Bare with { HubPatches = HubPatchPlace.Outside, PatchDiameter = Jobs.Mm(180), ApexDiameter = Jobs.Mm(260) },
    };

    private sealed class Near : System.Collections.Generic.IEqualityComparer<double>
    {
        public bool Equals(double left, double right) => Math.Abs(left - right) < 0.002;

        public int GetHashCode(double value) => 0;
    }
}
