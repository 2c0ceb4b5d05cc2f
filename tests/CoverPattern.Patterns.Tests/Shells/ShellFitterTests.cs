using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Shells;

public class ShellFitterTests
{
    // The 24 ft dome: R = 12 ft.
    private const double TwelveFeet = 3657.6;

    [Theory]
    [InlineData(3, 5, "-4.83x5 53.93x10")]
    [InlineData(2, 3, "-0.79x10")]
    [InlineData(4, 7, "-6.93x10 86.06x10")]
    [InlineData(3, 4, "3.73x10 63.18x5")]
    public void Fit_StandOff25_HasBaseHeights(int frequency, int rows, string heights)
    {
        // Own calculation made apart from this project, R = 3657.6, deck through the frame's lowest hubs.
        var job = Jobs.Dome(frequency, rows, TwelveFeet);
        var frame = FrameBuilder.Build(job.Frame);

        var shell = ShellFitter.Fit(job, frame);

        var found = frame.Base.Select(hub => Math.Round(shell.Nodes[hub].Position.Z, 2)).GroupBy(z => z).OrderBy(g => g.Key)
            .Select(g => FormattableString.Invariant($"{g.Key:0.00}x{g.Count()}"));
        Assert.Equal(heights, string.Join(' ', found));
    }

    [Fact]
    public void Fit_AllBaseHubsWithinAMillimetre_HeightsCountFromThem()
    {
        // The 2V's cover ends 0.79 mm below the deck at all its base hubs: own calculation, as in the table above.
        var job = Jobs.Dome(2, 3, TwelveFeet) with { Skirt = new SkirtWish(Jobs.Mm(0)), Ease = 0 };

        var shell = ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));

        Assert.All(shell.Nodes, node => Assert.Equal(node.Position.Z + 0.79, node.AboveHem, 0.005));
    }

    [Theory]
    [InlineData(2, 3, new[] { 2013.5043, 2276.9507 })]
    [InlineData(3, 5, new[] { 1284.3726, 1485.7064, 1486.7620, 1518.8800 })]
    public void StandOff_InnerStruts_GrowToTheTable(int frequency, int rows, double[] lengths)
    {
        // Own calculation, R = 3657.6, 25 mm; struts away from the base, where hubs have all their facets.
        var job = Jobs.Dome(frequency, rows, TwelveFeet);
        var frame = FrameBuilder.Build(job.Frame);

        var moved = StandOff.Move(frame, 25);

        var inner = frame.Struts.Where(strut => frame.Hubs[strut.From].Ring > 1 && frame.Hubs[strut.To].Ring > 1)
            .Select(strut => Point3.Distance(moved[strut.From], moved[strut.To])).ToArray();
        Assert.All(inner, length => Assert.Contains(lengths, one => Math.Abs(one - length) < 0.0001));
        Assert.All(lengths, one => Assert.Contains(inner, length => Math.Abs(one - length) < 0.0001));
    }

    [Theory]
    [InlineData(2, 26.49646)]
    [InlineData(3, 25.59145)]
    [InlineData(4, 25.309)]
    public void StandOff_TopHub_RisesExactly(int frequency, double rise)
    {
        // d / cos(tilt) where all planes at the hub tilt alike: 2V 19.3483, 3V 12.3421 degrees (own calculation).
        var job = Jobs.Dome(frequency, frequency + 1, TwelveFeet);
        var frame = FrameBuilder.Build(job.Frame);

        var moved = StandOff.Move(frame, 25);

        Assert.Equal(rise, moved[^1].Z - frame.Hubs[^1].Position.Z, 0.001);
    }

    [Fact]
    public void Cut_SkirtAtStandOff0Drop0_IsTheTable()
    {
        // 3V 5/8, R = 3657.6: ten right triangles 1507.307 x 58.350 and five rectangles 1476.018 x 58.350,
        // 0.87039 m2 in all, plan perimeter 22 453.162 (own calculation).
        var job = Jobs.Dome(3, 5, TwelveFeet, standOff: 0) with { Skirt = new SkirtWish(Jobs.Mm(0)) };
        var (shell, cut) = Cut(job);

        var skirt = cut.Patches.Where(patch => shell.Faces[patch.Face].Kind == FaceKind.Skirt).Select(patch => Rings.Bounds(patch.Corners)).ToArray();

        Assert.Equal(10, skirt.Count(box => Math.Abs(box.Width - 1507.307) < 0.001 && Math.Abs(box.Height - 58.350) < 0.001));
        Assert.Equal(5, skirt.Count(box => Math.Abs(box.Width - 1476.018) < 0.001 && Math.Abs(box.Height - 58.350) < 0.001));
        Assert.Equal(870_390, Area(shell, cut, FaceKind.Skirt), 5.0);
        Assert.Equal(22_453.162, HemLength(cut), 0.001);
    }

    [Fact]
    public void Cut_HemAt25_IsTheTable()
    {
        // Own calculation: hem of the 24 ft 3V 5/8 at 25 mm, no ease.
        var (_, cut) = Cut(Jobs.Dome(3, 5, TwelveFeet));

        Assert.Equal(22_611.11, HemLength(cut), 0.005);
    }

    [Theory]
    [InlineData(0, 67.39)]
    [InlineData(25, 67.87)]
    public void Fit_Ease_LengthensTheBasePolyline(double standOff, double growth)
    {
        // e = 0.003 on the base polyline of the 24 ft dome (22 464.452 at stand-off 0; own calculation).
        var job = Jobs.Dome(3, 5, TwelveFeet, standOff);
        double Girth(Shell shell) => Enumerable.Range(0, 15).Sum(i => Point3.Distance(shell.Nodes[i].Position, shell.Nodes[(i + 1) % 15].Position));

        var difference = Girth(Jobs.Shell(job with { Ease = 0.003 })) - Girth(Jobs.Shell(job));

        Assert.Equal(growth, difference, 0.005);
    }

    [Fact]
    public void Cut_Drop0At25_TakesFiveTips()
    {
        // At the five low hubs the middle facet loses a tip 5.4 mm wide (own calculation).
        var job = Jobs.Dome(3, 5, TwelveFeet) with { Skirt = new SkirtWish(Jobs.Mm(0)) };
        var (shell, cut) = Cut(job);

        var tips = cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem && arc.LengthMm < 10).Select(arc => arc.LengthMm).ToArray();

        Assert.Equal(5, tips.Length);
        Assert.All(tips, tip => Assert.Equal(5.4, tip, 0.05));
        Assert.All(shell.Nodes.Where(node => node.Label.EndsWith('f')), foot => Assert.Equal(0, foot.Position.Z, 1e-9));
    }

    [Fact]
    public void Cut_HubsWithinAMillimetreOfTheEdge_HaveNoSkirt()
    {
        // 2V 1/2 at 25 mm stands 0.79 mm below the deck all round: neither clipped nor skirted at drop 0.
        var job = Jobs.Dome(2, 3, TwelveFeet) with { Skirt = new SkirtWish(Jobs.Mm(0)) };

        var (shell, cut) = Cut(job);

        Assert.All(shell.Faces, face => Assert.Equal(FaceKind.Facet, face.Kind));
        Assert.Equal(40, cut.Patches.Length);
        Assert.Equal(10, cut.Arcs.Count(arc => arc.Role == EdgeRole.Hem));
    }

    [Theory]
    [InlineData(2, 3, 5, 6)]
    [InlineData(3, 5, 5, 6)]
    [InlineData(4, 6, 10, 14)]
    [InlineData(4, 7, 10, 14)]
    public void FacetKinds_At25_AreTheTable(int frequency, int rows, int merged, int handed)
    {
        // Distinct facets of the cover at 25 mm, R = 3657.6, within 0.002 mm: mirror twins merged / told apart (own calculation).
        var kinds = FacetKinds.Count(Jobs.Shell(Jobs.Dome(frequency, rows, TwelveFeet)));

        Assert.Equal(new FacetKinds(merged, handed), kinds);
    }

    private static (Shell Shell, Subdivision Cut) Cut(Job job)
    {
        var shell = Jobs.Shell(job);
        return (shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell))));
    }

    private static double HemLength(Subdivision cut) => cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Sum(arc => arc.LengthMm);

    private static double Area(Shell shell, Subdivision cut, FaceKind kind) =>
        cut.Patches.Where(patch => shell.Faces[patch.Face].Kind == kind).Sum(patch => Rings.SignedArea(patch.Corners));
}
