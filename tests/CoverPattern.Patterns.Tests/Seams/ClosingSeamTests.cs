using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Seams;

public class ClosingSeamTests
{
    private static readonly ClosingWish Rear = new(ClosingWish.Rear, Jobs.Mm(40), null);

    [Fact]
    public void Chain_ThreeV_RunsFromTheEdgeToTheRingBelowTheTopRow()
    {
        var (shell, cut) = Closed(Jobs.Dome(3, 5, 3657.6), Rear);

        // 3V 5/8: rings 0 to 5, the top hub alone in ring 5; so four struts up to ring 4, and the upright of the skirt below them.
        Assert.Equal(4, ClosingSeam.LastRing(shell, Rear));
        Assert.Equal(5, ClosingSeam.Chain(shell, Rear).Length);
        Assert.Equal(4, ClosingSeam.Struts(shell, cut).Length);
        Assert.StartsWith(ClosingSeam.From(shell, cut) + "-", ClosingSeam.Struts(shell, cut)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void From_Rear_IsTheBaseHubFarthestFromTheFront()
    {
        var (shell, cut) = Closed(Jobs.Dome(3, 5, 3657.6), Rear);

        var rear = shell.Nodes.Single(node => node.Label == ClosingSeam.From(shell, cut));

        // The front is +x (docs/frame.md).
        Assert.All(shell.Nodes.Where(node => node.Label.StartsWith("H0.", StringComparison.Ordinal)), node => Assert.True(node.Position.X >= rear.Position.X - 1e-6));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void Chain_EndNamed_EndsThere(int to)
    {
        var (shell, cut) = Closed(Jobs.Dome(3, 5, 3657.6), Rear with { To = to });

        Assert.Equal(to, ClosingSeam.Struts(shell, cut).Length);
    }

    [Fact]
    public void Girths_ThreeV_AreTheStringsRoundTheHubs()
    {
        // Own calculation: the sum of the base chords of the 24 ft 3V 5/8 at stand-off 0 is 22.464 m; the chords above it are
        // of the tables' factors: ring 4 is five struts of class B, 0.40355 x R.
        var shell = Jobs.Shell(Jobs.Dome(3, 5, 3657.6, standOff: 0));

        var girths = ClosingSeam.Girths(shell, Rear);

        Assert.Equal([0, 1, 2, 3, 4], girths.Select(girth => girth.Ring));
        Assert.Equal(22_464, girths[0].LengthMm, 0.5);
        Assert.Equal(5 * 0.40355 * 3657.6, girths[4].LengthMm, 0.1);
    }

    /// <summary>On any dome the chain is one line of seams, each strut a ring higher, none of another base hub's.</summary>
    [Fact]
    public void Chain_RandomDome_RisesRingByRing() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[2, 17], Gen.Int[0, 59]).Sample(
            (frequency, rows, which) =>
            {
                var job = Jobs.Dome(frequency, Math.Min(rows, (3 * frequency) - 1), 4000);
                var hubs = FrameBuilder.Build(job.Frame).Hubs.Where(hub => hub.Ring == 0).Select(hub => hub.Label).ToArray();
                var wish = Rear with { At = hubs[which % hubs.Length] };

                var (shell, cut) = Closed(job, wish);

                var struts = ClosingSeam.Struts(shell, cut);

                Assert.Contains(ClosingSeam.From(shell, cut), hubs);
                Assert.Equal(ClosingSeam.LastRing(shell, wish), struts.Length);
                Assert.StartsWith(wish.At + "-", struts[0], StringComparison.Ordinal);
                Assert.All(struts.Zip(struts.Skip(1)), pair => Assert.Equal(pair.First.Split('-')[1], pair.Second.Split('-')[0]));
                var plan = SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell));
                Assert.All(ClosingSeam.Chain(shell, wish), edge => Assert.Equal(EdgeRole.Seam, plan.Edges[edge].Role));
            },
            iter: 60);

    /// <summary>Bands end at few struts of a row: the chain takes those, from the rearmost base hub where it can.</summary>
    [Fact]
    public void Chain_Bands_FollowsTheCutsOfTheRows()
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Panels = [new PanelWish(PanelForm.Bands, new RowRange(1, 3)), new PanelWish(PanelForm.Facets)] };

        var (shell, cut) = Closed(job, Rear);

        var (_, panels) = Jobs.Panels(job);
        var plan = SeamPlanner.Plan(job, shell, panels);
        Assert.Equal(4, ClosingSeam.Struts(shell, cut).Length);
        Assert.All(ClosingSeam.Chain(shell, Rear, plan), edge => Assert.Equal(EdgeRole.Seam, plan.Edges[edge].Role));
        Assert.Empty(SeamWishCheck.Faults(job with { Seam = job.Seam with { Closing = Rear } }, shell, plan));
    }

    private static (Shell Shell, Subdivision Cut) Closed(Job job, ClosingWish wish)
    {
        var (shell, cut, _) = Jobs.Pieces(job with { Seam = job.Seam with { Closing = wish } });
        return (shell, cut);
    }

    [Theory]
    [InlineData(MakeUpForm.Plain)]
    [InlineData(MakeUpForm.Felled)]
    [InlineData(MakeUpForm.Welded)]
    public void Finish_Closing_IsWideOnBothSidesAndKeepsItsNotches(MakeUpForm form)
    {
        var job = Jobs.Dome(3, 5, 3657.6) with { Seam = SeamWish.Of(form, Jobs.Mm(15)) with { Closing = Rear } };

        var set = Jobs.Pieces(job).Finishing.Set;

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id);
        var sides = set.Pieces.SelectMany(piece => patterns[piece.Pattern].Runs.Select((run, i) => (piece.Runs[i].Arc, Run: run, Notches: patterns[piece.Pattern].Notches.Count(notch => notch.Run == i))))
            .Where(side => side.Run.MakeUp.EndsWith(", closing", StringComparison.Ordinal)).ToArray();
        // Four struts and the skirt's upright, two sides each.
        Assert.Equal(10, sides.Length);
        Assert.All(sides, side => Assert.Equal(40, side.Run.AllowanceMm));
        Assert.All(sides.GroupBy(side => side.Arc), pair => Assert.Equal([EdgeSide.Over, EdgeSide.Under], pair.Select(side => side.Run.Side).Order()));
        Assert.All(sides.Where(side => side.Run.LengthMm > 300), side => Assert.True(side.Notches > 0));
        Assert.Empty(Jobs.Pieces(job).Finishing.Faults);
    }

    [Fact]
    public void Finish_ClosingWiderThanAPiece_NamesTheClosingAllowance()
    {
        var job = Jobs.Dome(4, 7, 500, standOff: 5) with { Seam = SeamWish.Of(MakeUpForm.Plain, Jobs.Mm(10)) with { Closing = Rear with { Allowance = Jobs.Mm(300) } }, Hem = new HemWish(Jobs.Mm(10), Jobs.Mm(5)) };

        Assert.Contains(Jobs.Pieces(job).Finishing.Faults, fault => fault.Place == "seam.closing.allowance" && fault.Said == "300 mm");
    }
}
