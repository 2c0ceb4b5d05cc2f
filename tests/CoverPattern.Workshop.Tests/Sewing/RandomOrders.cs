using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Random covers with several openings of all kinds at random places, and with roof, liner and pads.</summary>
internal static class RandomOrders
{
    // A skirt lower than its hem is refused whatever the openings, millimetres.
    private const double LeastDrop = 60;

    private static readonly Gen<CoverSizes> Sizes =
        from frequency in Gen.Int[2, 4]
        from rows in Gen.Int[(3 * frequency / 2) - 1, (3 * frequency / 2) + 1]
        from radius in Gen.Double[1200, 1900]
        from standOff in Gen.Double[10, 45]
        from drop in Gen.Double[40, 200]
        from ease in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 0.006])
        select new CoverSizes(frequency, rows, radius * frequency, standOff, Math.Max(LeastDrop, drop), ease);

    private static readonly Gen<OutlineWish> Outlines =
        from form in OneOf(OutlineForm.Circle, OutlineForm.Rectangle, OutlineForm.Rounded, OutlineForm.Arch)
        from width in Gen.Double[250, 1100]
        from height in Gen.Double[250, 1100]
        from corner in Gen.Double[0.3, 1]
        let high = form == OutlineForm.Arch ? Math.Max(height, (width / 2) + 50) : height
        select new OutlineWish(form)
        {
            Width = Mm(width),
            Height = form == OutlineForm.Circle ? default : Mm(high),
            Corner = form == OutlineForm.Rounded ? Mm(corner / 2 * Math.Min(width, high)) : default,
        };

    private static readonly Gen<OpeningPlace> Places =
        from facet in Gen.Int[0, 999]
        from right in Gen.Double[-450, 450]
        from up in Gen.Double[-400, 400]
        from turned in Gen.OneOf(Gen.Const(0.0), Gen.Double[-60, 60])
        select new OpeningPlace(FormattableString.Invariant($"{facet}"), Mm(right), Mm(up)) { Turned = turned };

    private static readonly Gen<OpeningWish> Windows =
        from outline in Outlines
        from place in Places
        from laid in Gen.Enum<LayingRule>()
        from held in OneOf(JoinKind.Sewn, JoinKind.Zip, JoinKind.HookLoop, JoinKind.Ring)
        from filled in Gen.Int[0, 2]
        from turn in Gen.Double[8, 20]
        from strip in Gen.Bool
        from drip in Gen.Bool
        select new OpeningWish(outline, place, laid, Mm(turn))
        {
            Held = filled == 0 ? JoinKind.Sewn : held,
            Sheet = filled > 0 ? "clear" : null,
            Screen = filled == 2 && held != JoinKind.Sewn ? "mesh" : null,
            Lap = Mm(held == JoinKind.HookLoop ? 45 : 22),
            Ring = filled > 0 && held == JoinKind.Ring ? Mm(36) : null,
            Strip = strip && filled > 0 && held == JoinKind.Zip ? Mm(80) : null,
            Drip = drip ? Mm(70) : null,
        };

    private static readonly Gen<OpeningWish> Doors =
        from kind in OneOf(OpeningKind.Door, OpeningKind.BaseVent)
        from form in OneOf(OutlineForm.Rectangle, OutlineForm.Rounded, OutlineForm.Arch)
        from facet in Gen.Int[0, 999]
        from right in Gen.Double[-150, 150]
        from width in Gen.Double[330, 800]
        from height in Gen.Double[600, 1500]
        from below in Gen.Double[150, 450]
        from opens in Gen.Enum<OpensAt>()
        from held in OneOf(JoinKind.Zip, JoinKind.Zip, JoinKind.HookLoop)
        from screen in Gen.Bool
        let corner = form == OutlineForm.Rectangle ? 0 : 155
        select new OpeningWish(
            new OutlineWish(form) { Width = Mm(width), Height = Mm(height), Corner = form == OutlineForm.Rounded ? Mm(corner) : default },
            new OpeningPlace(FormattableString.Invariant($"base {facet}"), Mm(right), Mm((height / 2) - below)),
            LayingRule.Either,
            Mm(15))
        {
            Kind = kind,
            Held = opens == OpensAt.Middle ? JoinKind.Zip : held,
            Opens = opens,
            Flap = "canvas",
            Screen = screen ? "mesh" : null,
            Lap = Mm(held == JoinKind.HookLoop && opens != OpensAt.Middle ? 45 : 20),
            Strip = Mm(80),
            Drip = Mm(80),
            Webbing = kind == OpeningKind.Door ? Mm(38) : null,
            Threshold = kind == OpeningKind.Door && screen ? Mm(100) : null,
        };

    private static readonly Gen<OpeningWish> HighVents =
        from outline in Outlines
        from place in Places
        from hood in Gen.Double[60, 200]
        from screen in Gen.Bool
        select new OpeningWish(outline with { Width = Mm(0.5 * outline.Width.Millimetres), Height = Mm(0.5 * outline.Height.Millimetres), Corner = Mm(0.5 * outline.Corner.Millimetres) }, place, LayingRule.Either, Mm(15))
        {
            Kind = OpeningKind.HighVent,
            Held = JoinKind.HookLoop,
            Flap = "canvas",
            Screen = screen ? "mesh" : null,
            Lap = Mm(45),
            Hood = Mm(hood),
        };

    private static readonly Gen<OpeningWish> Slits =
        from length in Gen.Double[150, 700]
        from place in Places
        select new OpeningWish(new OutlineWish(OutlineForm.Line) { Height = Mm(length) }, place, LayingRule.Either, Mm(15)) { Kind = OpeningKind.Slit, Held = JoinKind.Zip, Strip = Mm(80) };

    private static readonly Gen<PipeWish> Pipes =
        from place in Places
        from level in Gen.Bool
        from radius in Gen.Double[40, 90]
        from clear in Gen.Double[60, 220]
        from cone in Gen.Bool
        select new PipeWish(new PipePlace(level ? PipeRun.Level : PipeRun.Vertical, place.Facet, place.Right, place.Up), Mm(2 * radius), Mm(clear), "heat")
        {
            Spread = cone ? 15 : null,
            Gap = Mm(3),
            Sleeve = Mm(120),
            TurnUnder = Mm(12),
            Lap = Mm(40),
            RainFlap = Mm(40),
            ClosingFlap = Mm(25),
        };

    private static readonly Gen<WindowWish> Rounds =
        from place in Places
        from aperture in Gen.Double[150, 500]
        from screen in Gen.Bool
        select new WindowWish([place.Facet], null, Mm(aperture), Mm(35), Mm(20), Mm(12), "clear") { Screen = screen ? "mesh" : null, Right = Mm(place.Right.Millimetres / 3), Up = Mm(place.Up.Millimetres / 3) };

    /// <summary>Jobs of which openings may lie anywhere: most of them have some that cannot be made.</summary>
    internal static readonly Gen<Job> Jobs =
        from sizes in Sizes
        from form in OneOf(PanelForm.Facets, PanelForm.Facets, PanelForm.Bands, PanelForm.Gores)
        from openings in Gen.OneOf(Windows, Windows, Windows, Doors, Doors, HighVents, Slits).Array[2, 9]
        from rounds in Rounds.Array[0, 3]
        from pipes in Pipes.Array[0, 2]
        from roof in Gen.Int[-2, 3]
        from liner in Gen.Int[0, 2]
        from pads in Gen.Bool
        from zip in Gen.Select(Gen.Int[0, 99], Gen.Double[120, 500], Gen.Double[150, 700])
        select Make(SewingJobs.Dome(sizes), form, openings, rounds, pipes) with
        {
            Roof = roof > 0 ? new RoofWish(Mm(110), Mm(700), Mm(50)) { Row = sizes.Rows - roof + 1, Screen = roof == 2 ? "mesh" : null } : null,
            Liner = liner > 0 ? new LinerWish("canvas", Mm(40 + (20 * liner)), Mm(50)) { Margin = Mm(30) } : null,
            Insulation = pads ? new InsulationWish("canvas", Mm(5)) : null,
        };

    /// <summary>What a failing test prints: the job with the numbers that make it.</summary>
    internal static string Told(Job job) => SewingJobs.OrderOf(job).Sizes + $" {string.Join(" ", job.Panels.Select(panel => panel.Form))} roof {job.Roof?.Row} {job.Roof?.Screen} liner {job.Liner?.Gap.Typed} pads {job.Insulation is not null}\n"
        + string.Join("\n", job.Openings.Select((wish, i) => $"O{i + 1} {wish}").Concat(job.Windows.Select(wish => $"{wish}")).Concat(job.Pipes.Select(wish => $"{wish}")));

    /// <summary>Gives every place the label of a facet of the frame.</summary>
    private static Job Make(Job dome, PanelForm form, OpeningWish[] openings, WindowWish[] rounds, PipeWish[] pipes)
    {
        var frame = FrameBuilder.Build(dome.Frame);
        string[] facets = [.. frame.Facets.Select(facet => facet.Label)];
        string[] standing = [.. frame.Facets.Where(facet => facet.Row == 1 && facet.Hubs.Count(hub => frame.Base.Contains(hub)) == 2).Select(facet => facet.Label)];
        string LabelOf(string drawn) => drawn.StartsWith("base ", StringComparison.Ordinal) ? Of(standing, drawn[5..]) : Of(facets, drawn);
        return dome with
        {
            Panels = form == PanelForm.Facets ? [] : [new PanelWish(form)],
            Cloths =
            [
                dome.Cloths[0] with { RollWidth = Mm(12_000) },
                .. new[] { "clear", "mesh" }.Select(name => dome.Cloths[0] with { Name = name, RollWidth = Mm(12_000) }),
                dome.Cloths[0] with { Name = "heat", RollWidth = Mm(12_000), ServiceTemperature = 550 },
            ],
            Openings = [.. openings.Select(wish => wish with { Place = wish.Place with { Facet = LabelOf(wish.Place.Facet) } })],
            Windows = [.. rounds.Select(wish => wish with { Facets = [LabelOf(wish.Facets[0])] })],
            Pipes = [.. pipes.Select(wish => wish with { Place = wish.Place with { Facet = LabelOf(wish.Place.Facet) } })],
        };
    }

    private static Gen<T> OneOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    private static string Of(string[] labels, string number) => labels[int.Parse(number, System.Globalization.CultureInfo.InvariantCulture) % labels.Length];

    private static Measure Mm(double millimetres) => SewingJobs.Mm(millimetres);
}
