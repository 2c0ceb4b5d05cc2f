using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class SubdividerTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    [InlineData(8, 13)]
    public void Cut_AreasSumToTheShell_BeforeSnapping(int frequency, int rows)
    {
        // By another formula: triangles by cross products in space, the skirt by trapezoids over the plan.
        var job = Jobs.Dome(frequency, rows, 3657.6);
        var frame = FrameBuilder.Build(job.Frame);
        var hubs = StandOff.Move(frame, 25);
        var facets = frame.Facets.Sum(f => Point3.Cross(hubs[f.Hubs[1]] - hubs[f.Hubs[0]], hubs[f.Hubs[2]] - hubs[f.Hubs[0]]).Length / 2);
        var skirt = frame.Base.Select((hub, i) => (From: hubs[hub], To: hubs[frame.Base[(i + 1) % frame.Base.Length]]))
            .Sum(chord => Point2.Distance(chord.From.Plan, chord.To.Plan) * ((chord.From.Z + chord.To.Z + 120) / 2));
        var shell = ShellFitter.Fit(job, frame);

        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));

        Assert.Equal(1, cut.Patches.Sum(patch => Rings.SignedArea(patch.Corners)) / (facets + skirt), 1e-9);
    }

    [Theory]
    [InlineData(3, 5, 0)]
    [InlineData(3, 5, 60)]
    [InlineData(4, 7, 3)]
    [InlineData(5, 8, 20)]
    public void Cut_EveryArc_HasTwoSidesOrIsHem(int frequency, int rows, double drop)
    {
        var job = Jobs.Dome(frequency, rows, 3000) with { Skirt = new SkirtWish(Jobs.Mm(drop)) };
        var shell = Jobs.Shell(job);

        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));

        Assert.All(cut.Arcs, arc => Assert.Equal(arc.Role == EdgeRole.Hem, arc.Second is null));
        Assert.Equal(cut.Arcs.Length, cut.Arcs.Select(arc => arc.Label).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(cut.Patches.Sum(patch => patch.Arcs.Length), cut.Arcs.Sum(arc => arc.Second is null ? 1 : 2));
        Assert.All(cut.Arcs, arc => Assert.Equal(arc.LengthMm, SideLength(cut, arc.First), 1e-6));
        Assert.All(cut.Arcs.Where(arc => arc.Second is not null), arc => Assert.Equal(arc.LengthMm, SideLength(cut, arc.Second!.Value), 1e-6));
    }

    [Fact]
    public void Plan_Over_IsTheHigherOrTheCounterClockwiseNeighbour()
    {
        var job = Jobs.Dome(3, 5, 3000);
        var shell = Jobs.Shell(job);

        var plan = SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell));

        double Height(int face) => shell.Faces[face].Nodes.Average(node => shell.Nodes[node].Position.Z);
        double Bearing(int face) => Math.Atan2(shell.Faces[face].Nodes.Sum(node => shell.Nodes[node].Position.Y), shell.Faces[face].Nodes.Sum(node => shell.Nodes[node].Position.X));
        foreach (var (edge, wish) in shell.Edges.Zip(plan.Edges).Where(pair => pair.Second.Role == EdgeRole.Seam))
        {
            var under = wish.Over == edge.Left ? edge.Right : edge.Left;
            var higher = Height(wish.Over) - Height(under);
            Assert.True(higher > -1e-6);
            if (Math.Abs(higher) <= 1e-6)
            {
                Assert.True(Math.Sin(Bearing(wish.Over) - Bearing(under)) > 0);
            }
        }
    }

    [Fact]
    public void Check_ChordJustAboveTheEdge_HasNoSkirtAndSaysSo()
    {
        // 2V 1/2 at 25 mm stands 0.79 mm below the deck: a drop of 2.5 mm leaves 1.71 mm.
        var job = Jobs.Dome(2, 3, 3657.6) with { Skirt = new SkirtWish(Jobs.Mm(2.5)) };
        var shell = Jobs.Shell(job);

        var notices = SubdivisionCheck.Check(shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));

        Assert.Contains("10 base chords", notices.Single(notice => notice.Code == "no-skirt").Text, StringComparison.Ordinal);
        Assert.Empty(Check(Jobs.Dome(3, 5, 3000)));
    }

    private static System.Collections.Immutable.ImmutableArray<Notice> Check(Job job)
    {
        var shell = Jobs.Shell(job);
        return SubdivisionCheck.Check(shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));
    }

    private static double SideLength(Subdivision cut, PatchSide side)
    {
        var corners = cut.Patches[side.Patch].Corners;
        return Point2.Distance(corners[side.Edge], corners[(side.Edge + 1) % corners.Length]);
    }
}
