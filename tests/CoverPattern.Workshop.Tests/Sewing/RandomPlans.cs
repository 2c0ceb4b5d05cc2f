using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Random covers with random panels.</summary>
internal static class RandomPlans
{
    // Facets of a frame are at least this long, as a share of the radius divided by the frequency (class A of 8V: 0.956).
    private const double ShortestStrut = 0.95;

    private const int Forms = 7;

    private static readonly Gen<CoverSizes> Sizes =
        from frequency in Gen.Int[1, 8]
        from rows in Gen.Int[2, Math.Min((3 * frequency) - 1, 2 * frequency)]
        from radius in Gen.Double[1500, 8000]
        from standOff in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60])
        from drop in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 250])
        select new CoverSizes(frequency, rows, radius, standOff, drop, 0.003);

    /// <summary>Jobs whose panels are right.</summary>
    internal static readonly Gen<Job> Jobs =
        from sizes in Sizes
        from makeUp in Gen.OneOf(Gen.Const(MakeUpForm.Plain), Gen.Const(MakeUpForm.Felled), Gen.Const(MakeUpForm.Welded))
        from widthShare in Gen.Double[0.004, 0.015]
        from nap in Gen.Enum<Nap>()
        from turns in Gen.Enum<TurnRule>()
        from hasFace in Gen.Bool
        from form in Gen.Int[0, Forms - 1]
        from pick in Gen.Int[0, 9999]
        let job = SewingJobs.Dome(sizes)
        select job with
        {
            Panels = [.. Panels(sizes, form, pick)],
            Seam = SeamWish.Of(makeUp, SewingJobs.Mm(widthShare * ShortestStrut * sizes.Radius / sizes.Frequency)),
            Hem = new HemWish(SewingJobs.Mm(8), SewingJobs.Mm(2)),
            Cloths = [job.Cloths[0] with { Nap = nap, HasFace = hasFace, RollWidth = SewingJobs.Mm(100_000) }],
            Lay = job.Lay with { Turns = turns },
        };

    internal static string Told(Job job) => SewingJobs.OrderOf(job).Sizes + " " + string.Join(" ", job.Panels.Select(panel =>
        $"{panel.Form} {panel.Rows} {panel.Parts} {string.Join(",", panel.Facets)}")) + $" {job.Seam.MakeUp.Form} {job.Seam.MakeUp.Width.Typed} {job.Cloths[0].Nap} {job.Lay.Turns} face {job.Cloths[0].HasFace}";

    private static PanelWish[] Panels(CoverSizes sizes, int form, int pick)
    {
        var row = 1 + (pick % sizes.Rows);
        var (bands, rest) = (new PanelWish(PanelForm.Bands), new PanelWish(PanelForm.Facets));
        return form switch
        {
            0 => [bands],
            1 => [bands with { Rows = new RowRange(1, row), Parts = 1 + (pick % 5) }, .. row < sizes.Rows ? new[] { rest } : []],
            2 => [bands with { Rows = new RowRange(row, row), Longest = SewingJobs.Mm(1.2 * sizes.Radius) }, rest],
            3 => [new PanelWish(PanelForm.Gores)],
            4 when row > 1 => [new PanelWish(PanelForm.Gores, new RowRange(row, sizes.Rows)), bands],
            5 => [bands with { Rows = new RowRange(row, sizes.Rows) }, .. row > 1 ? new[] { rest } : []],
            _ => [Group(sizes, pick), rest],
        };
    }

    /// <summary>A facet and the neighbours beyond its seams, which leave no hub inside.</summary>
    private static PanelWish Group(CoverSizes sizes, int pick)
    {
        var faces = TrueCover.Build(sizes).Faces.Values.Where(face => !face.IsSkirt).OrderBy(face => face.Label, StringComparer.Ordinal).ToArray();
        var face = faces[pick % faces.Length];
        return new PanelWish(PanelForm.Group)
        {
            Facets = [face.Label, .. face.Edges.Where(edge => edge.Role == "seam").Select(edge => edge.Neighbour!).Distinct(StringComparer.Ordinal)],
        };
    }
}
