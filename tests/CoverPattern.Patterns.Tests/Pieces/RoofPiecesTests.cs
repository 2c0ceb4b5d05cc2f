using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Pieces;

public class RoofPiecesTests
{
    private static readonly Job Dome = Jobs.Dome(3, 5, 3657.6) with { Roof = new RoofWish(Jobs.Mm(100), Jobs.Mm(750), Jobs.Mm(50)) { Row = 4, Screen = "canvas" } };

    [Theory]
    // By hand: 80 mm beside either hub, and what lies between in as few equal parts as may be: 1340 in two of 670; 750 in one; 751 in two of 375.5; too short for two: one in the middle.
    [InlineData(1500, 750, new[] { 80, 750, 1420.0 })]
    [InlineData(910, 750, new[] { 80, 830.0 })]
    [InlineData(911, 750, new[] { 80, 455.5, 831 })]
    [InlineData(150, 750, new[] { 75.0 })]
    public void TabsAlong_Strut_AreEvenAndBesideHubs(double length, double most, double[] at)
    {
        var tabs = RoofMarks.TabsAlong(length, most);

        Assert.Equal(at.Length, tabs.Length);
        Assert.All(at.Zip(tabs), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
    }

    [Fact]
    public void Of_ThreeV_ListsZipsTabsHookAndLoopLoops()
    {
        var (fittings, flaps) = Fittings(Dome);

        // Five zips, and five of the screen; ten struts of 1.52 m with three tabs each; one length of hook and loop a strut; the ring below the apex has five hubs.
        Assert.Equal((10, 30, 10, 5), (Count(Fitting.Zip), Count(Fitting.LoadTab), Count(Fitting.HookLoop), Count(Fitting.LiftingLoop)));
        Assert.Equal(["Z01", "Z01s"], fittings.Where(fitting => fitting.Label.StartsWith("Z01", StringComparison.Ordinal)).Select(fitting => fitting.Label).Order(StringComparer.Ordinal));
        Assert.Equal(["H4.01", "H4.02", "H4.03", "H4.04", "H4.05"], fittings.Where(fitting => fitting.What == Fitting.LiftingLoop).Select(fitting => fitting.Label));
        Assert.All(flaps, flap => Assert.Equal(flap.LengthOf(0), fittings.Single(fitting => fitting.Label == flap.Label).LengthMm));

        int Count(string what) => fittings.Count(fitting => fitting.What == what);
    }

    [Fact]
    public void Of_RoofOfTheTopFive_LoopAtTheApexAlone()
    {
        var (fittings, _) = Fittings(Dome with { Roof = Dome.Roof! with { Row = 5, Screen = null } });

        Assert.Equal("H5.01", Assert.Single(fittings, fitting => fitting.What == Fitting.LiftingLoop).Label);
    }

    [Fact]
    public void Of_NoLoopsOrNoRoof_None()
    {
        Assert.DoesNotContain(Fittings(Dome with { Roof = Dome.Roof! with { HasLoops = false } }).Fittings, fitting => fitting.What == Fitting.LiftingLoop);
        Assert.Empty(Fittings(Dome with { Roof = null }).Fittings);
    }

    [Fact]
    public void Weight_HeavyCloth_IsTold()
    {
        // By hand: rows 4 and 5 of this dome have 20 facets of about 1 m2, with allowances and flap 22 m2; at 3 kg/m2 that is over 25 kg, at 350 g/m2 not.
        Assert.Contains(Notices(3000), notice => notice.Code == "roof-weight");
        Assert.DoesNotContain(Notices(350), notice => notice.Code == "roof-weight");
        Assert.Contains(Notices(null), notice => notice.Code == "roof-no-mass");
        Assert.Contains(Notices(350), notice => notice.Code == "roof-lap" && notice.Text.Contains("the flap of 100 mm sheds the water", StringComparison.Ordinal));
    }

    private static (ImmutableArray<Fitting> Fittings, ImmutableArray<AddedPiece> Flaps) Fittings(Job job)
    {
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var cut = Cut(job);
        var flaps = RoofFlap.Make(job, frame, shell, cut);
        return (RoofFittings.Of(job, frame, shell, cut, flaps), flaps);
    }

    private static Subdivision Cut(Job job)
    {
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var plan = SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell));
        return Subdivider.Cut(shell, RoofLine.Find(job, frame, shell)?.ZipIn(plan) ?? plan);
    }

    private static ImmutableArray<Notice> Notices(double? mass)
    {
        var job = Dome with { Cloths = [Dome.Cloths[0] with { MassPerArea = mass }] };
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var cut = Cut(job);
        var set = PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut), RoofFlap.Make(job, frame, shell, cut)).Set;
        return RoofNotices.Of(job, frame, shell, new OpeningLaying([], [], []), set);
    }
}
