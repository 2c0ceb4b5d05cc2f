using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

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
