using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Seams;

public class SeamMakeUpsTests
{
    private static readonly MakeUp Zip = MakeUp.Of(MakeUpForm.Zip, Jobs.Mm(20));
    private static readonly MakeUp Fell = MakeUp.Of(MakeUpForm.Felled, Jobs.Mm(12.7)) with { Name = "our fell" };

    [Fact]
    public void Plan_UprightsAreZips_RowsStayPlain()
    {
        var (shell, plan) = Plan(new SeamWish(Plain) { Others = [new SeamChoice(SeamSet.Uprights, [], Zip)] });

        // 3V 5/8: rings of 15, 15, 15, 10 and 5 hubs from the base; seams along a ring: 15 + 15 + 10 + 5, the base chords are folds.
        Assert.Equal(45, plan.Edges.Count(edge => edge.MakeUp == Plain));
        Assert.Equal(plan.Edges.Count(edge => edge.Role == EdgeRole.Seam) - 45, plan.Edges.Count(edge => edge.MakeUp == Zip));
        Assert.All(plan.Edges.Zip(shell.Edges).Where(pair => pair.First.MakeUp == Plain), pair => Assert.Equal(Ring(shell, pair.Second.From), Ring(shell, pair.Second.To)));
    }

    [Fact]
    public void Plan_RowsAreFelled_UprightsStayPlain()
    {
        var (_, plan) = Plan(new SeamWish(Plain) { Others = [new SeamChoice(SeamSet.Rows, [], Fell)] });

        Assert.Equal(45, plan.Edges.Count(edge => edge.MakeUp == Fell));
    }

    [Theory]
    [InlineData("H0.02-H1.02")]
    [InlineData("H1.02-H0.02")]
    public void Plan_StrutNamed_IsMadeOtherwiseWhicheverEndIsFirst(string strut)
    {
        var (shell, plan) = Plan(new SeamWish(Plain) { Others = [new SeamChoice(SeamSet.Uprights, [], Zip), new SeamChoice(SeamSet.Struts, Padded(strut), Fell)] });

        var edge = Assert.Single(Enumerable.Range(0, plan.Edges.Length), edge => plan.Edges[edge].MakeUp == Fell);
        Assert.Equal(["H0.02", "H1.02"], new[] { Label(shell.Edges[edge].From), Label(shell.Edges[edge].To) }.Order(StringComparer.Ordinal));
        string Label(int node) => shell.Nodes[node].Label;
    }

    [Fact]
    public void Plan_NothingChosen_IsAsBefore()
    {
        var (_, plan) = Plan(new SeamWish(Plain));

        Assert.All(plan.Edges, edge => Assert.Equal(edge.Role == EdgeRole.Seam ? Plain : null, edge.MakeUp));
    }

    /// <summary>Whatever is chosen, only make-ups change: roles and the sides that lie over stay.</summary>
    [Fact]
    public void Plan_RandomChoices_ChangeMakeUpsAlone() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 14], Gen.Enum<SeamSet>().Array[0, 4], Gen.Enum<MakeUpForm>(), Gen.Bool).Sample(
            (frequency, rows, sets, form, closes) =>
            {
                var job = Jobs.Dome(frequency, Math.Min(rows, (3 * frequency) - 1), 4000);
                var shell = Jobs.Shell(job);
                var other = MakeUp.Of(form, Jobs.Mm(10)) with { Name = "other" };
                var chosen = job with
                {
                    Seam = new SeamWish(Plain)
                    {
                        Others = [.. sets.Select(set => new SeamChoice(set, [], other))],
                        Closing = closes ? new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), null) : null,
                    },
                };

                var (before, after) = (SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)), SeamPlanner.Plan(chosen, shell, PanelPlan.SingleFacets(shell)));

                Assert.Equal(before.Edges.Select(edge => (edge.Role, edge.Over)), after.Edges.Select(edge => (edge.Role, edge.Over)));
                Assert.All(after.Edges, edge => Assert.Equal(edge.Role == EdgeRole.Seam, edge.MakeUp is not null));
                Assert.All(after.Edges.Where(edge => edge.MakeUp is not null), edge => Assert.Contains(edge.MakeUp!.Name, chosen.Seam.Known().Select(known => known.Name)));
            },
            iter: 100);

    private static MakeUp Plain { get; } = MakeUp.Of(MakeUpForm.Plain, Jobs.Mm(15));

    private static string Ring(Shell shell, int node) => shell.Nodes[node].Label.Split('.')[0];

    private static ImmutableArray<string> Padded(string strut) => [strut];

    private static (Shell Shell, SeamPlan Plan) Plan(SeamWish seam)
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Seam = seam };
        var shell = Jobs.Shell(job);
        return (shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
    }
}
