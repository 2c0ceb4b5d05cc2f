using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Openings;

public class OpeningLayerTests
{
    [Fact]
    public void Lay_TwoFootWindow_StandsOffTheAxesAsCalculated()
    {
        // Own calculation from chord factors: R = 3657.6 mm, 3V 5/8, stand-off 0; 609.6 mm aperture at the incentre leaves 76.4 mm
        // on facets AAB and 127.4 mm on facets BCC from the aperture to the strut axis.
        var job = Dome3() with { Windows = [Window(609.6) with { Rows = new RowRange(2, 5) }] };
        var (frame, shell) = (FrameBuilder.Build(job.Frame), Jobs.Shell(job));

        var gaps = OpeningLayer.Lay(job, frame, shell).Windows
            .Select(window => Math.Round(WindowRoom.Round(frame, shell, window.Region.Centre).Axis - 304.8, 1)).ToArray();

        Assert.Equal([76.4, 127.4], gaps.Distinct().Order());
        Assert.Equal(75, gaps.Length);
    }

    [Fact]
    public void Lay_TwoFootWindow_IsTightOnAabAlone()
    {
        // By hand: 76.4 - 35 (ring) - 20 (tube) = 21.4 mm, above the least of 20 and below 25.
        var job = Dome3() with { Windows = [Window(609.6) with { Facets = ["F5.01"] }] };

        var laid = Lay(job);

        Assert.Empty(laid.Faults);
        Assert.Contains("21.4 mm from the ring's outer edge to the tube wall", Assert.Single(laid.Notices, notice => notice.Code == "window-tight").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(620, "16.2 mm from the ring's outer edge to the tube wall", "smaller by 7.6 mm")]
    [InlineData(2000, "2000 mm at", "inside its facet")]
    public void Lay_WindowTooLarge_SaysValueLimitAndWayOut(double aperture, string said, string allowed)
    {
        // By hand: 381.2 - 310 - 35 - 20 = 16.2 mm.
        var fault = Assert.Single(Lay(Dome3() with { Windows = [Window(aperture) with { Facets = ["F5.01"] }] }).Faults);

        Assert.Equal("windows[0].aperture", fault.Place);
        Assert.Contains(said, fault.Said, StringComparison.Ordinal);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Lay_ManyThingsWrong_TellsThemAll()
    {
        var job = Dome3() with
        {
            Windows =
            [
                Window(300) with { Facets = ["F3.01", "F9.01", "F1.03k"] },
                Window(300) with { Rows = new RowRange(7, 7) },
                Window(300) with { Facets = ["F3.01"], Right = Jobs.Mm(50) },
                Window(300) with { Facets = ["F3.02"], Up = Jobs.Mm(900) },
            ],
        };

        var faults = Lay(job).Faults;

        Assert.Equal(
            ["windows[0].facets[1]", "windows[0].facets[2]", "windows[1].rows", "windows[2].aperture", "windows[3].aperture"],
            faults.Select(fault => fault.Place).Order(StringComparer.Ordinal));
        Assert.Contains("skirt faces", faults.Single(fault => fault.Place == "windows[0].facets[2]").Allowed, StringComparison.Ordinal);
        // By hand: centres 50 mm apart, outer radii of 185 mm each.
        Assert.Contains("lie over each other by 320.0 mm", faults.Single(fault => fault.Place == "windows[2].aperture").Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Lay_HubsInTheWay_AreFaults()
    {
        // By hand, AAB of 3V at R = 3657.6 mm: sides 1275.0, 1275.0 and 1475.9 mm, so the incentre lies 381.2 / sin(half an angle) from
        // the hubs: 381.2 / sin(27.3) = 831 and 381.2 / sin(35.4) = 658 mm; less 85 and 560 the nearer leaves 13 mm.
        var near = Dome3() with { Windows = [Window(100) with { Facets = ["F5.01"] }], StandOff = Dome3().StandOff with { HubRadius = Jobs.Mm(560) } };

        Assert.Contains("to the hub", Assert.Single(Lay(near).Faults).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Lay_LowWindow_KeepsOffTheHem()
    {
        var job = Dome3() with { Windows = [Window(560) with { Facets = ["F1.01", "F1.02"] }], Skirt = new SkirtWish(Jobs.Mm(0)) };

        var faults = Lay(job).Faults;

        Assert.Contains(faults, fault => fault.Said.Contains("finished lower edge", StringComparison.Ordinal));
    }

    [Fact]
    public void Lay_NeighboursOverAStrut_KeepTheirDistance()
    {
        // By hand: incentres of neighbours are 2 x 381 mm and more apart; rings of 335 mm leave less than 120.
        var job = Dome3() with { Windows = [Window(600) with { Facets = ["F5.01", "F5.02"] }] };

        var fault = Assert.Single(Lay(job).Faults);

        Assert.Contains("W5.2 beside W5.1", fault.Said.Replace("W5.0", "W5.", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("at least 120 mm", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Lay_FacetsThatFaceTheSky_AreToldOf()
    {
        var sky = Lay(Dome3() with { Windows = [Window(300) with { Rows = new RowRange(5, 5) }] });
        var side = Lay(Dome3() with { Windows = [Window(300) with { Rows = new RowRange(2, 2) }] });

        Assert.Contains(sky.Notices, notice => notice.Code == "window-to-the-sky");
        Assert.DoesNotContain(side.Notices, notice => notice.Code == "window-to-the-sky");
        Assert.Contains(sky.Notices, notice => notice.Code == "window-drip");
    }

    [Fact]
    public void Faults_SeamNear_AreTold()
    {
        // By hand: 76.4 - 35 = 41.4 mm to the seam over the axis, at stand-off 0.
        var job = Dome3() with { Windows = [Window(609.6) with { Rows = new RowRange(5, 5) }], Clearances = ClearanceWish.Usual with { Seam = Jobs.Mm(45) } };
        var shell = Jobs.Shell(job);

        var faults = OpeningSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)), Lay(job).Windows);

        Assert.Contains("41.4 mm from the ring's outer edge to a seam", Assert.Single(faults).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_Windows_LeaveTheShellLessItsRegions()
    {
        var job = Dome3(25) with { Windows = [Window(400) with { Rows = new RowRange(2, 3) }] };
        var (shell, laid) = (Jobs.Shell(job), Lay(job));

        var plan = SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell));
        var (whole, cut) = (Subdivider.Cut(shell, plan), Subdivider.Cut(shell, plan, laid.Regions));

        // Area account before anything is snapped; circles by the formula of school.
        var regions = laid.Windows.Length * Math.PI * 200 * 200;
        Assert.Equal(1, cut.Patches.Sum(patch => patch.Area) / (whole.Patches.Sum(patch => Rings.SignedArea(patch.Corners)) - regions), 1e-9);
        Assert.Equal(whole.Arcs, cut.Arcs.Take(whole.Arcs.Length));
        var rims = cut.Arcs.Skip(whole.Arcs.Length).ToArray();
        Assert.All(rims, rim => Assert.Equal((EdgeRole.Rim, null), (rim.Role, rim.Second)));
        Assert.Equal(["R001", "R002"], rims.Take(2).Select(rim => rim.Label));
        Assert.All(rims, rim => Assert.Contains(cut.Patches[rim.First.Patch].Holes, hole => ReferenceEquals(cut.Arcs[hole.Arc], rim)));
    }

    private static Job Dome3(double standOff = 0) => Jobs.Dome(3, 5, 3657.6, standOff) with
    {
        StandOff = new StandOffWish(Jobs.Mm(Math.Max(20, standOff)), Jobs.Mm(standOff), Jobs.Mm(standOff == 0 ? -20 : 0)) { HubRadius = Jobs.Mm(50) },
    };

    private static WindowWish Window(double aperture) => Jobs.Window(aperture);

    private static OpeningLaying Lay(Job job) => OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Jobs.Shell(job));
}
