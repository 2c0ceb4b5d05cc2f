using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Seams;

public class RoofCheckTests
{
    private static readonly RoofWish Row = new(Jobs.Mm(100), Jobs.Mm(750), Jobs.Mm(50)) { Row = 4 };
    private static readonly Job Dome = Jobs.Dome(3, 5, 3657.6);

    [Fact]
    public void Faults_GoodRoofOrNone_None()
    {
        Assert.Empty(Faults(Dome));
        Assert.Empty(Faults(Dome with { Roof = Row }));
    }

    [Fact]
    public void Faults_RowThatIsNot_TellsTheRows() => Single(Dome with { Roof = Row with { Row = 6 } }, "roof.row", "6", "2 to 5");

    [Fact]
    public void Faults_UnknownFacet_NamesIt() => Single(Dome with { Roof = Row with { Row = null, Facets = ["F5.01", "F9.01"] } }, "roof.facets", "\"F9.01\"", "labels of facets");

    [Fact]
    public void Faults_FacetOnTheBase_NamesItsHubs() => Single(Dome with { Roof = Row with { Row = null, Facets = ["F1.01"] } }, "roof.facets", "base hub", "wall below it");

    [Fact]
    public void Faults_TwoFacetsThatMeetInAHub_NamesTheHub() =>
        // F5.01 and F5.03 meet at the apex alone.
        Single(Dome with { Roof = Row with { Row = null, Facets = ["F5.01", "F5.03"] } }, "roof.facets", "meets itself at hub H5.01", "add or leave out a facet");

    [Fact]
    public void Faults_PanelAcrossTheLine_NamesTheStruts() =>
        Single(Dome with { Roof = Row, Panels = [new PanelWish(PanelForm.Gores)] }, "roof.row", "which cloth goes over uncut", "lies on seams");

    [Fact]
    public void Faults_ClosingSeamUpTheRoof_AsksForALowerRing() =>
        Single(Dome with { Roof = Row, Seam = Dome.Seam with { Closing = new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), null) } }, "seam.closing.to", "4", "ends at the roof's edge");

    [Fact]
    public void Faults_ClosingSeamUpToTheRoof_None() =>
        Assert.Empty(Faults(Dome with { Roof = Row, Seam = Dome.Seam with { Closing = new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), 3) } }));

    [Fact]
    public void Faults_StrutLongerThanTheLongestZip_TellsTheLength() =>
        Assert.All(Faults(Dome with { Roof = Row, Notions = Dome.Notions with { ZipLongest = Jobs.Mm(1400) } }), fault =>
        {
            Assert.Equal("notions.zipLongest", fault.Place);
            Assert.Contains("from hub to hub", fault.Allowed, StringComparison.Ordinal);
        });

    [Fact]
    public void Faults_FlapTooWideBetweenItsMitres_AsksForANarrowerOne() =>
        // A hole in the roof over one facet: its corners of 55 and 69 degrees take 500 / tan 27 + 500 / tan 35 = 1700 mm of a strut of 1.28 m.
        Single(Dome with { Roof = Row with { Row = null, Facets = [.. Rows4And5().Where(facet => facet != "F5.01")], Flap = Jobs.Mm(500) } }, "roof.flap", "500 mm", "mitres leave 0 mm");

    [Fact]
    public void Faults_TwoLinesApart_None() => Assert.Empty(Faults(Dome with { Roof = Row with { Row = null, Facets = [.. Rows4And5().Where(facet => facet != "F5.01")] } }));

    [Fact]
    public void Faults_NameOfTheRoofsMakeUp_IsTaken() =>
        Single(Dome with { Roof = Row, MakeUps = [Dome.Seam.MakeUp with { Name = RoofWish.ZipName }] }, "makeUps", "\"roof zip\"", "another name");

    [Fact]
    public void Faults_GroupNamedAsTheScreensPieces_IsTaken() =>
        Single(Dome with { Roof = Row with { Screen = "canvas" }, Panels = [new PanelWish(PanelForm.Group) { Name = "Mid", Facets = ["F3.01"] }, new PanelWish(PanelForm.Facets)] }, "panels", "\"Mid\"", "does not begin with M");

    [Fact]
    public void Faults_OpeningAcrossTheLineOrUnderTheFlap_AreNamed()
    {
        OpeningWish Round(string facet, double up) => new(
            new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(300) }, new OpeningPlace(facet, Jobs.Mm(0), Jobs.Mm(up)), LayingRule.Either, Jobs.Mm(15));

        // F3.02 hangs below ring 3 with its ring edge up: its incentre lies 412 mm below the line, so the rim's top 262 mm; 200 mm farther up 62, 400 farther it crosses.
        Assert.Empty(Faults(Dome with { Roof = Row, Openings = [Round("F3.02", 0)] }));
        Single(Dome with { Roof = Row, Openings = [Round("F3.02", -200)] }, null, null, null);
        var below = Faults(Dome with { Roof = Row, Openings = [Round("F3.02", 200)] });
        var across = Faults(Dome with { Roof = Row, Openings = [Round("F3.02", 400)] });

        Assert.Contains("below the roof's edge", Assert.Single(below).Said, StringComparison.Ordinal);
        Assert.Contains("crosses the line", Assert.Single(across).Said, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Rows4And5() => FrameBuilder.Build(Dome.Frame).Facets.Where(facet => facet.Row >= 4).Select(facet => facet.Label);

    private static void Single(Job job, string? place, string? said, string? allowed)
    {
        if (place is null)
        {
            Assert.Empty(Faults(job));
            return;
        }

        var fault = Assert.Single(Faults(job));
        Assert.Equal(place, fault.Place);
        Assert.Contains(said!, fault.Said, StringComparison.Ordinal);
        Assert.Contains(allowed!, fault.Allowed, StringComparison.Ordinal);
    }

    private static ImmutableArray<Fault> Faults(Job job)
    {
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));
        var plan = SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell));
        plan = RoofLine.Find(job, frame, shell)?.ZipIn(plan) ?? plan;
        return RoofCheck.Faults(job, frame, shell, plan, OpeningLayer.Lay(job, frame, shell));
    }
}
