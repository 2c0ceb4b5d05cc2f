using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Seams;

/// <summary>Everything that a job may say wrongly about panels is a fault with its place and a way out, never an exception.</summary>
public class PanelFaultTests
{
    private static readonly PanelWish Rest = new(PanelForm.Facets);

    private static readonly Job ThreeV = Jobs.Dome(3, 5, 3657.6);

    [Fact]
    public void Plan_FacetInTwoEntries_IsAFault() =>
        AssertFault("panels[1].rows", "F2.01", "taken by panels[0] too", Group("F2.01", "F2.02"), new PanelWish(PanelForm.Facets, new RowRange(1, 5)));

    [Fact]
    public void Plan_FacetsLeftOut_IsAFault() =>
        AssertFault("panels", "5 facets are in no entry: F5.01", "\"rows\": \"rest\"", new PanelWish(PanelForm.Bands, new RowRange(1, 4)));

    [Fact]
    public void Plan_UnknownFacet_IsAFault() => AssertFault("panels[0].facets", "F9.99", "\"F1.01\" to \"F5.05\"", Group("F9.99", "F1.01"), Rest);

    [Fact]
    public void Plan_UnknownRow_IsAFault() => AssertFault("panels[0].rows", "\"5-6\"", "rows 1 (at the deck) to 5", new PanelWish(PanelForm.Bands, new RowRange(5, 6)), Rest);

    [Fact]
    public void Plan_GroupThatFallsApart_IsAFault() => AssertFault("panels[0].facets", "F1.01, F1.09", "fall apart", Group("F1.01", "F1.09"), Rest);

    [Fact]
    public void Plan_GroupThatSurroundsAHub_IsAFaultAndNamesIt() =>
        AssertFault("panels[0].facets", "F5.01, F5.02, F5.03, F5.04, F5.05", "H5.01 would be surrounded", Group("F5.01", "F5.02", "F5.03", "F5.04", "F5.05"), Rest);

    [Fact]
    public void Plan_GroupThatClosesARing_IsAFault() =>
        AssertFault("panels[0].facets", "F4.01", "close a ring", Group([.. Enumerable.Range(1, 15).Select(i => FormattableString.Invariant($"F4.{i:00}"))]), Rest);

    [Fact]
    public void Plan_SlitOutsideTheGroup_IsAFault() =>
        AssertFault("panels[0].slits", "H0.01-H0.02", "struts between two facets of this group", Group("F5.01", "F5.02") with { Slits = ["H0.01-H0.02"] }, Rest);

    [Fact]
    public void Plan_SlitThatIsNoStrut_IsAFault() =>
        AssertFault("panels[0].slits", "\"H5.01-H0.02\"", "a strut of this frame", Group("F5.01", "F5.02") with { Slits = ["H5.01-H0.02"] }, Rest);

    [Fact]
    public void Plan_SlitThatCutsTheGroupInTwo_IsAFault() =>
        AssertFault("panels[0].facets", "F5.01, F5.02", "fall apart", Group("F5.01", "F5.02") with { Slits = ["H4.02-H5.01"] }, Rest);

    [Fact]
    public void Plan_GoreWithTooFewSlits_IsAFault() =>
        AssertFault("panels[0].slits", "\"H3.01-H3.02\"", "would be surrounded", new PanelWish(PanelForm.Gores) { Slits = ["H3.01-H3.02"] });

    [Fact]
    public void Plan_GoreSlitAtItsEdge_IsAFault() =>
        AssertFault("panels[0].slits", "H4.01-H5.01", "struts inside a gore", new PanelWish(PanelForm.Gores) { Slits = ["H4.01-H5.01"] });

    [Fact]
    public void Plan_GoresOfRowsApart_IsAFault() =>
        AssertFault("panels[1].rows", "rows 5, 4, 2, 1", "rows that lie one on the other", new PanelWish(PanelForm.Bands, new RowRange(3, 3)), new PanelWish(PanelForm.Gores));

    [Fact]
    public void Plan_SecondRest_IsAFault() => AssertFault("panels[1].rows", "\"rest\"", "nothing is left", Rest, new PanelWish(PanelForm.Bands));

    [Fact]
    public void Plan_MorePartsThanFacets_IsAFault() =>
        AssertFault("panels[0].parts", "16", "1 to 15, the number of facets of row 4", new PanelWish(PanelForm.Bands, new RowRange(4, 4)) { Parts = 16 }, Rest);

    [Fact]
    public void Plan_CutThatIsNoUpright_IsAFault() =>
        AssertFault("panels[0].at", "H1.01-H1.02", "from its lower ring", new PanelWish(PanelForm.Bands, new RowRange(2, 2)) { At = ["H1.01-H1.02"] }, Rest);

    [Fact]
    public void Plan_PartsLongerThanTheLongest_SaysHowManyWouldDo() =>
        AssertFault("panels[0].longest", "3 m", "10 parts would do", new PanelWish(PanelForm.Bands, new RowRange(2, 2)) { Parts = 5, Longest = new Measure(3000, "3 m") }, Rest);

    [Fact]
    public void Plan_LongestShorterThanAFacet_IsAFault() =>
        AssertFault("panels[0].longest", "1 m", "at least 1", new PanelWish(PanelForm.Bands, new RowRange(2, 2)) { Longest = new Measure(1000, "1 m") }, Rest);

    [Fact]
    public void Plan_RowTooWideForTheRoll_IsAFaultWhateverTheNumberOfParts()
    {
        // Rows of the 24 ft 3V 5/8 are about 1320 to 1380 mm high; 1200 mm of cloth leave 1160 mm.
        var faults = Faults(ThreeV with { Panels = [new PanelWish(PanelForm.Bands)], Cloths = [ThreeV.Cloths[0] with { RollWidth = Jobs.Mm(1200) }] });

        Assert.Equal(4, faults.Count(fault => fault.Allowed.Contains("no number of parts makes this row narrower", StringComparison.Ordinal) && fault.Allowed.Contains("usable width of 1160 mm", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_PartTooWideByItsBend_SaysHowManyWouldDo() =>
        AssertFault("panels[0].parts", "row 4 in 1 parts", "parts would do", new PanelWish(PanelForm.Bands, new RowRange(4, 4)) { Parts = 1 }, Rest);

    [Fact]
    public void Plan_NameTwice_IsAFault() =>
        AssertFault("panels[1].name", "\"roof\"", "a name that no other piece has", Group("F5.01") with { Name = "roof" }, Group("F5.02") with { Name = "roof" }, Rest);

    [Fact]
    public void Plan_TurnedFold_IsAFault()
    {
        var faults = Faults(ThreeV with { Seam = ThreeV.Seam with { Turned = ["H0.01-H0.02", "H7.01-H0.01"] } });

        Assert.Equal(["\"H7.01-H0.01\"", "\"H0.01-H0.02\""], faults.Select(fault => fault.Said));
        Assert.All(faults, fault => Assert.Equal("seam.turned", fault.Place));
    }

    [Fact]
    public void Plan_ManyThingsWrong_AreToldAtOnce()
    {
        var faults = Faults(ThreeV with
        {
            Panels = [Group("F1.01", "F1.09"), new PanelWish(PanelForm.Bands, new RowRange(5, 5)) { Parts = 9 }, new PanelWish(PanelForm.Bands, new RowRange(7, 7))],
        });

        Assert.Equal(["panels[2].rows", "panels", "panels[0].facets", "panels[1].parts"], faults.Select(fault => fault.Place));
    }

    private static PanelWish Group(params string[] facets) => new(PanelForm.Group) { Facets = [.. facets] };

    private static Fault[] Faults(Job job) => [.. Jobs.Panels(job).Plan.Faults];

    private static void AssertFault(string place, string said, string allowed, params PanelWish[] panels)
    {
        var faults = Faults(ThreeV with { Panels = [.. panels] });

        Assert.Contains(faults, fault => fault.Place == place && fault.Said.Contains(said, StringComparison.Ordinal) && fault.Allowed.Contains(allowed, StringComparison.Ordinal));
    }
}
