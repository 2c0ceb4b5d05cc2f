using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class SeamWishCheckTests
{
    private static readonly MakeUp Plain = MakeUp.Of(MakeUpForm.Plain, Jobs.Mm(15));
    private static readonly MakeUp Weld = MakeUp.Of(MakeUpForm.Welded, Jobs.Mm(40));

    [Fact]
    public void Faults_PlainJob_None() => Assert.Empty(Faults(new SeamWish(Plain)));

    [Fact]
    public void Faults_UnknownStrutAndBaseChord_AreNamed()
    {
        var faults = Faults(new SeamWish(Plain) { Others = [new SeamChoice(SeamSet.Struts, ["H0.02-H1.02", "H0.02-H4.01", "H0.01-H0.02"], Weld with { Joins = ["any"] })] });

        Assert.Equal(["seam.others[0].between[1]", "seam.others[0].between[2]"], faults.Where(fault => fault.Place.Contains("between", StringComparison.Ordinal)).Select(fault => fault.Place));
        Assert.Equal("\"H0.02-H4.01\"", faults[0].Said);
        Assert.Contains("uncut", faults[1].Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_RowsOfADomeOfOneRow_ThereAreNone()
    {
        var job = Jobs.Dome(1, 1, 3000) with { Seam = new SeamWish(Plain) { Others = [new SeamChoice(SeamSet.Rows, [], Plain with { Name = "other" })] } };
        var shell = Jobs.Shell(job);

        Assert.Equal("seam.others[0].between", Assert.Single(SeamWishCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)))).Place);
    }

    [Theory]
    [InlineData("H0.16", null, 40, "seam.closing.at")]
    [InlineData("H1.01", null, 40, "seam.closing.at")]
    [InlineData("rear", 9, 40, "seam.closing.to")]
    [InlineData("rear", 3, 14, "seam.closing.allowance")]
    public void Faults_ClosingThatCannotBe_NamesItsPlace(string at, int? to, double allowance, string place)
    {
        var fault = Assert.Single(Faults(new SeamWish(Plain) { Closing = new ClosingWish(at, Jobs.Mm(allowance), to) }));

        Assert.Equal(place, fault.Place);
        Assert.NotEmpty(fault.Said);
        Assert.NotEmpty(fault.Allowed);
    }

    [Fact]
    public void Faults_ClosingOverAFold_TellsToCutTheRowThere()
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Seam = new SeamWish(Plain) { Closing = new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), null) } };
        var shell = Jobs.Shell(job);
        var plan = SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell));
        // No seam goes from ring 1 to ring 2: row 2 is cut nowhere.
        bool Joins(ShellEdge edge) => new[] { edge.From, edge.To }.Select(node => shell.Nodes[node].Label[..2]).Order(StringComparer.Ordinal).SequenceEqual(["H1", "H2"]);
        plan = plan with { Edges = [.. plan.Edges.Select((one, edge) => Joins(shell.Edges[edge]) ? new EdgePlan(EdgeRole.Fold, null, -1) : one)] };

        var fault = Assert.Single(SeamWishCheck.Faults(job, shell, plan));

        Assert.Equal("seam.closing", fault.Place);
        Assert.Contains("Cut the row there", fault.Allowed, StringComparison.Ordinal);
    }

    /// <summary>Bands are cut at the sector edges: five base hubs have seams all the way up, the others a fold on the way.</summary>
    [Fact]
    public void Faults_ClosingOverBands_NamesTheBaseHubsThatHaveSeams()
    {
        var job = Jobs.Dome(3, 5, 3657.6) with
        {
            Panels = [new PanelWish(PanelForm.Bands)],
            Seam = new SeamWish(Plain) { Closing = new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), null) },
        };
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var plan = SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell));
        string[] FoldsFrom(string hub) => [.. SeamWishCheck.Faults(job with { Seam = job.Seam with { Closing = job.Seam.Closing! with { At = hub } } }, shell, plan).Select(fault => fault.Allowed)];

        var hubs = frame.Base.Select(hub => frame.Hubs[hub].Label).ToArray();
        var closable = hubs.Where(hub => FoldsFrom(hub).Length == 0).ToArray();

        var way = closable.Length > 0 ? string.Join(", ", closable) : "another base hub, of which none has seams all the way now";
        Assert.All(hubs.Except(closable), hub => Assert.All(FoldsFrom(hub), words => Assert.EndsWith("or begin at " + way, words, StringComparison.Ordinal)));
        Assert.NotEqual(hubs.Length, closable.Length);
    }

    [Theory]
    [InlineData("weldable", null, false)]
    [InlineData("weldable", "pvc", true)]
    [InlineData("any", "pvc", true)]
    [InlineData("any", null, false)]
    [InlineData("canvas", "pvc", true)]
    [InlineData("film", "pvc", false)]
    public void Faults_WeldOfTheTable_AsksForAFamilyAndForItsCloths(string joins, string? family, bool mayJoin)
    {
        var faults = Faults(new SeamWish(Weld with { Name = "hot air", Joins = [joins] }), family);

        Assert.Equal(mayJoin, faults.Length == 0);
        Assert.All(faults, fault => Assert.Equal(("seam.makeUp", "\"hot air\""), (fault.Place, fault.Said)));
        Assert.All(faults, fault => Assert.Contains("take", fault.Allowed, StringComparison.Ordinal));
    }

    [Fact]
    public void Trouble_UnlikeFamilies_AreNamed()
    {
        var (one, other) = (Jobs.Dome(1, 1, 3000).Cloths[0] with { Weld = "pvc" }, Jobs.Dome(1, 1, 3000).Cloths[0] with { Name = "film", Weld = "pe" });

        Assert.Contains("equal family only", Joining.Trouble(Weld, one, other)!, StringComparison.Ordinal);
        Assert.Null(Joining.Trouble(Plain, one, other));
        Assert.Null(Joining.Trouble(Weld, one, one));
        Assert.Contains("no weld family", Joining.Trouble(Weld, one, other with { Weld = null })!, StringComparison.Ordinal);
    }

    /// <summary>A job without a table says nothing of families: it is warned, not refused.</summary>
    [Fact]
    public void Notices_BareWeldOnClothOfWhichNothingIsSaid_Warns()
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Seam = new SeamWish(Weld) };
        var shell = Jobs.Shell(job);

        Assert.Empty(SeamWishCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));
        Assert.Equal("weld-not-stated", Assert.Single(SeamWishCheck.Notices(job, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)))).Code);
        var stated = job with { Cloths = [job.Cloths[0] with { Weld = "pvc" }] };
        Assert.Empty(SeamWishCheck.Notices(stated, SeamPlanner.Plan(stated, shell, PanelPlan.SingleFacets(shell))));
    }

    private static System.Collections.Immutable.ImmutableArray<Fault> Faults(SeamWish seam, string? family = null)
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Seam = seam };
        job = job with { Cloths = [job.Cloths[0] with { Weld = family }] };
        var shell = Jobs.Shell(job);
        return SeamWishCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
    }
}
