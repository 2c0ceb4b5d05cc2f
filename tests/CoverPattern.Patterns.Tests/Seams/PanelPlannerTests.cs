using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class PanelPlannerTests
{
    private static readonly PanelWish Rest = new(PanelForm.Facets);

    private static readonly Job ThreeV = Jobs.Dome(3, 5, 3657.6);

    [Fact]
    public void Plan_NothingWished_IsSingleFacets()
    {
        var (shell, plan) = Jobs.Panels(ThreeV);

        Assert.Equal(105, plan.Panels.Length);
        Assert.All(plan.Panels, panel => Assert.Equal(PanelShape.Facet, panel.Shape));
        Assert.Equal(Enumerable.Range(0, shell.Faces.Length), plan.Panels.SelectMany(panel => panel.Faces).Order());
    }

    /// <summary>Inside corners at the rings' hubs: practice and geometry check tables (own calculation), degrees, to 0.1.</summary>
    [Theory]
    [InlineData(2, 3, new[] { 231.1, 206.6 })]
    [InlineData(3, 5, new[] { 242.8, 230.7, 212.2, 182.1 })]
    [InlineData(4, 7, new[] { 247.2, 240.2, 228.5, 214.0, 187.3 })]
    public void LargestCorner_RowsBelowTheTop_AreTabled(int frequency, int rows, double[] corners)
    {
        var job = Jobs.Dome(frequency, rows, 3657.6, standOff: 0);
        var frame = FrameBuilder.Build(job.Frame);
        var struts = new StrutTable(frame, ShellFitter.Fit(job, frame));

        foreach (var (corner, i) in corners.Select((corner, i) => (corner, i)))
        {
            Assert.Equal(corner, SectorCuts.LargestCorner(struts, struts.Row(rows - 1 - i)!), 0.06);
        }
    }

    /// <summary>Only the 187.3 degrees of the lowest 4V corners, of which there are ten, are left in five.</summary>
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    public void Plan_BandsByDefault_AreCutAtEveryInsideCorner(int frequency, int rows)
    {
        var (shell, plan) = Jobs.Panels(Jobs.Dome(frequency, rows, 3657.6) with { Panels = [new PanelWish(PanelForm.Bands)], Cloths = [Wide] });

        Assert.Empty(plan.Faults);
        foreach (var panel in plan.Panels.Where(panel => panel.Shape == PanelShape.Band))
        {
            var ring = FlatPanel.Lay(shell, panel.Faces, plan.Slits.ToHashSet()).Ring;
            Assert.All(Enumerable.Range(0, ring.Length), i => Assert.True(Corner(ring, i) < SectorCuts.InsideCorner + 3.5, panel.Label));
        }
    }

    [Fact]
    public void Plan_LongestPart_CutsIntoAsFewPartsAsItAsks()
    {
        // The lowest row of the 3V 5/8 has no inside corner: one strip of 22.4 m and the slant of its ends, halved and so on.
        int Parts(double longest) => Count(ThreeV with { Panels = [new PanelWish(PanelForm.Bands, new RowRange(1, 1)) { Longest = Jobs.Mm(longest) }, Rest] });

        Assert.Equal(1, Parts(24000));
        Assert.Equal(2, Parts(13000));
        Assert.Equal(5, Parts(5400));
        Assert.Equal(10, Parts(3200));
    }

    [Fact]
    public void Plan_StrutNamedOnce_CutsEverySector()
    {
        var (shell, plan) = Jobs.Panels(ThreeV with { Panels = [new PanelWish(PanelForm.Bands, new RowRange(2, 2)) { At = ["H1.02-H2.02"] }, Rest] });

        Assert.Empty(plan.Faults);
        Assert.Equal(5, plan.Panels.Count(panel => panel.Shape == PanelShape.Band));
        var cut = Array.FindIndex([.. shell.Edges], edge => shell.Nodes[edge.From].Label == "H1.02" && shell.Nodes[edge.To].Label == "H2.02" || shell.Nodes[edge.To].Label == "H1.02" && shell.Nodes[edge.From].Label == "H2.02");
        Assert.NotEqual(PanelOf(plan, shell.Edges[cut].Left), PanelOf(plan, shell.Edges[cut].Right));
    }

    [Fact]
    public void Plan_SlitNamedInAnySector_SlitsAllGoresAlike()
    {
        var (_, chosen) = Jobs.Panels(Gores([]));
        var (_, named) = Jobs.Panels(Gores(["H1.05-H1.06"]));

        // The 2V sector has one inner hub; ring 1 has ten hubs, two struts of it in each sector.
        Assert.Empty(named.Faults);
        Assert.Equal(5, named.Slits.Length);
        Assert.Equal(5, chosen.Slits.Length);
        Assert.Contains("H1.", Assert.Single(chosen.Notices).Text, StringComparison.Ordinal);

        static Job Gores(string[] slits) => Jobs.Dome(2, 3, 3657.6) with { Panels = [new PanelWish(PanelForm.Gores) { Slits = [.. slits] }], Cloths = [Wide] };
    }

    [Fact]
    public void Plan_Over_BetweenPartsOfARowIsTheCounterClockwiseOne()
    {
        var job = ThreeV with { Panels = [new PanelWish(PanelForm.Bands)] };
        var (shell, panels) = Jobs.Panels(job);

        var plan = SeamPlanner.Plan(job, shell, panels);

        var uprights = 0;
        foreach (var (edge, wish) in shell.Edges.Zip(plan.Edges).Where(pair => pair.Second.Role == EdgeRole.Seam))
        {
            var under = wish.Over == edge.Left ? edge.Right : edge.Left;
            if (panels.FaceRows[wish.Over] == panels.FaceRows[under])
            {
                uprights++;
                Assert.True(Math.Sin(Bearing(wish.Over) - Bearing(under)) > 0);
            }
            else
            {
                Assert.True(Height(wish.Over) > Height(under));
            }
        }

        // Five in each of five rows, and five between the strips of the skirt.
        Assert.Equal(30, uprights);

        double Height(int face) => shell.Faces[face].Nodes.Average(node => shell.Nodes[node].Position.Z);
        double Bearing(int face) => Math.Atan2(shell.Faces[face].Nodes.Sum(node => shell.Nodes[node].Position.Y), shell.Faces[face].Nodes.Sum(node => shell.Nodes[node].Position.X));
    }

    [Fact]
    public void Plan_TurnedSeam_HasTheOtherSideOver()
    {
        var turned = ThreeV with { Seam = ThreeV.Seam with { Turned = ["H1.01-H2.01"] } };
        var (shell, panels) = Jobs.Panels(turned);

        var differ = SeamPlanner.Plan(turned, shell, panels).Edges.Zip(SeamPlanner.Plan(ThreeV, shell, PanelPlan.SingleFacets(shell)).Edges).Select((pair, i) => (pair, i)).Where(entry => entry.pair.First != entry.pair.Second).ToArray();

        var (pair, edge) = Assert.Single(differ);
        Assert.Equal(shell.Edges[edge].Left + shell.Edges[edge].Right, pair.First.Over + pair.Second.Over);
    }

    private static readonly Cloth Wide = new("canvas", Jobs.Mm(20300), Jobs.Mm(10), Jobs.Mm(10), 350, Nap.None, HasFace: true);

    private static int Count(Job job) => Jobs.Panels(job with { Cloths = [Wide] }).Plan.Panels.Count(panel => panel.Shape == PanelShape.Band);

    private static string PanelOf(PanelPlan plan, int face) => plan.Panels.Single(panel => panel.Faces.Contains(face)).Label;

    private static double Corner(System.Collections.Immutable.ImmutableArray<Point2> ring, int i)
    {
        var (next, before) = (ring[(i + 1) % ring.Length] - ring[i], ring[(i + ring.Length - 1) % ring.Length] - ring[i]);
        var angle = Math.Atan2(Point2.Cross(next, before), Point2.Dot(next, before)) * 180 / Math.PI;
        return angle < 0 ? angle + 360 : angle;
    }
}
