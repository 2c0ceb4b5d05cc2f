using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Seams;

public class TiePlannerTests
{
    [Fact]
    public void Plan_Usual_TiesTopTwoRingsEverySecondBelowAndTheBase()
    {
        // 3V 5/8: rings from the top of 1, 5, 10, 15, 15 and 15 hubs (61 in all, own calculation); the last is the base:
        // 1 + 5 + every second of 10, 15 and 15 (5 + 8 + 8) + 15.
        var ties = Ties(TieRule.Usual, 80);

        Assert.Equal([15, 8, 8, 5, 5, 1], Enumerable.Range(0, 6).Select(ring => ties.Count(tie => tie.Hub.StartsWith($"H{ring}.", StringComparison.Ordinal))));
        Assert.Equal(ties.Length, ties.Select(tie => tie.Hub).Distinct(StringComparer.Ordinal).Count());
        Assert.All(ties, tie => Assert.Equal(80, tie.DistanceMm));
    }

    [Theory]
    [InlineData(TieRule.None, 0)]
    [InlineData(TieRule.Every, 61)]
    public void Plan_OtherRules_NoneOrAll(TieRule rule, int count) => Assert.Equal(count, Ties(rule, 80).Length);

    [Fact]
    public void Plan_DistanceOverHalfTheStruts_NoTie()
    {
        // The longest strut of the frame is 1509 mm.
        Assert.Empty(Ties(TieRule.Every, 780));
    }

    /// <summary>Seen in space, apart from arcs and sides: the tied seam rises at least as much as any other at the hub.</summary>
    [Fact]
    public void Plan_EveryHub_TakesTheSeamThatRisesMost()
    {
        var job = With(TieRule.Every, 80);
        var shell = Jobs.Shell(job);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));

        foreach (var tie in TiePlanner.Plan(job, shell, cut))
        {
            var hub = Enumerable.Range(0, shell.Nodes.Length).Single(node => shell.Nodes[node].Label == tie.Hub);
            var others = shell.Edges.Where(edge => edge.From == hub || edge.To == hub).Select(edge => edge.From == hub ? edge.To : edge.From).ToArray();
            var side = cut.Arcs.Single(arc => arc.Label == tie.Arc).First;
            var face = shell.Faces[cut.Patches[side.Patch].Face];
            var ends = (From: face.Nodes[face.Chart.IndexOf(cut.Patches[side.Patch].Corners[side.Edge])], To: face.Nodes[face.Chart.IndexOf(cut.Patches[side.Patch].Corners[(side.Edge + 1) % cut.Patches[side.Patch].Corners.Length])]);
            Assert.Equal(hub, tie.FromStart ? ends.From : ends.To);
            Assert.Equal(others.Max(node => shell.Nodes[node].Position.Z), shell.Nodes[tie.FromStart ? ends.To : ends.From].Position.Z, 1e-6);
        }
    }

    /// <summary>Equal pieces stay equal though only some of them bear a tie.</summary>
    [Theory]
    [InlineData(TieRule.Usual)]
    [InlineData(TieRule.Every)]
    public void Finish_Ties_MakeNoFurtherPatterns(TieRule rule)
    {
        var bare = Jobs.Pieces(With(TieRule.None, 80)).Finishing.Set;
        var tied = Jobs.Pieces(With(rule, 80)).Finishing.Set;

        Assert.Equal(bare.Patterns.Length, tied.Patterns.Length);
        Assert.Equal(bare.Pieces.Select(piece => piece.Pattern), tied.Pieces.Select(piece => piece.Pattern));
        Assert.Contains(tied.Patterns, pattern => pattern.Drills.Any(drill => drill.Purpose == "tie"));
        Assert.All(bare.Patterns, pattern => Assert.Empty(pattern.Drills));
    }

    /// <summary>A tie of the list finds its mark on both pieces of its seam.</summary>
    [Fact]
    public void Finish_Ties_EveryTieHasItsTwoMarks()
    {
        var job = With(TieRule.Usual, 80);
        var (_, _, finishing) = Jobs.Pieces(job);
        var set = finishing.Set;

        foreach (var tie in Ties(TieRule.Usual, 80))
        {
            var sides = set.Pieces.SelectMany(piece => piece.Runs.Select((run, i) => (Pattern: set.Patterns.Single(pattern => pattern.Id == piece.Pattern), run, i)))
                .Where(entry => entry.run.Arc == tie.Arc).ToArray();
            Assert.Equal(2, sides.Length);
            Assert.All(sides, entry =>
            {
                var run = entry.Pattern.Runs[entry.i];
                var (from, to) = (entry.Pattern.SewLine[run.From], entry.Pattern.SewLine[run.To]);
                var hub = tie.FromStart == (run.Side == EdgeSide.Over) ? from : to;
                Assert.Contains(entry.Pattern.Drills, drill => drill.Purpose == "tie"
                    && Math.Abs(Geometry.Point2.Distance(drill.At, hub) - 80) < 0.002 && Geometry.Lines.Distance(from, to, drill.At) < 0.002);
            });
        }
    }

    private static System.Collections.Immutable.ImmutableArray<Tie> Ties(TieRule rule, double distance)
    {
        var job = With(rule, distance);
        var shell = Jobs.Shell(job);
        return TiePlanner.Plan(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));
    }

    private static Job With(TieRule rule, double distance) =>
        Jobs.Dome(3, 5, 3657.6) with { Marks = MarkWish.Bare with { Ties = rule, TieDistance = Jobs.Mm(distance) } };
}
