using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Liners sewn up as covers with a negative stand-off: they fit below the frame, and the cover is what it is without them.</summary>
public class LinerSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly string GoodText = SewingJobs.PiecesText(Lined(Dome));

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a piece left out"] = (file => file.Remove(file.PieceOf("IP2.05")), "which is not"),
        ["everything a ten-thousandth larger"] = (file => file.Patterns().ToList().ForEach(pattern => PlantedFaults.Move(pattern, point => 1.0001 * point)), "off"),
        ["a piece mirrored"] = (file => file.PieceOf("IP2.05")["mirrored"] = true, "IP2.05"[1..]),
        ["partners exchanged"] = (file => PlantedFaults.Swap(file.PieceOf("IP2.05").Runs().First(), file.PieceOf("IP2.05").Runs().Last(), "partner"), "P2.05"),
        ["another hem"] = (file => PlantedFaults.Add(file.Patterns().SelectMany(pattern => pattern.Runs()).First(run => (string)run["role"]! == "hem" && (double)run["allowanceMm"]! < 40), "allowanceMm", -1), "hem"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_PlainLiner_None() => Assert.Empty(SewingUp.Faults(TwoShells.Liner(GoodText), SewingJobs.OrderOf(SewingJobs.Inner(Lined(Dome)))));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = SewingUp.Faults(TwoShells.Liner(PlantedFaults.Plant(GoodText, change)), SewingJobs.OrderOf(SewingJobs.Inner(Lined(Dome))));

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Faults_AnotherGap_Found() =>
        // A tenth of a millimetre more gap is 0.003 % of the radius: a strut of 1.5 m is 0.04 mm shorter.
        Assert.NotEmpty(SewingUp.Faults(TwoShells.Liner(SewingJobs.PiecesText(Lined(Dome, gap: 50.3))), SewingJobs.OrderOf(SewingJobs.Inner(Lined(Dome)))));

    [Fact]
    public void Cover_WithAndWithoutLiner_IsTheSame() =>
        Assert.Equal(JsonNode.Parse(SewingJobs.PiecesText(Dome))!.ToJsonString(), TwoShells.Cover(GoodText));

    [Fact]
    public void Faults_OtherDomesPanelsAndCovers_None() => Assert.All(
        new (CoverSizes Sizes, PanelForm Form, double Gap, double Hem, int Covers)[]
        {
            (new CoverSizes(2, 3, 2500, 20, 0, 0), PanelForm.Facets, 45, 30, 1),
            (new CoverSizes(4, 7, 4000, 30, 80, 0.002), PanelForm.Bands, 100, 120, 1),
            (new CoverSizes(3, 4, 3000, 25, 60, -0.001), PanelForm.Gores, 60, 80, 2),
        },
        entry =>
        {
            var dome = SewingJobs.Dome(entry.Sizes);
            var job = dome with { Covers = entry.Covers, Panels = entry.Form == PanelForm.Facets ? [] : [new PanelWish(entry.Form)], Cloths = [.. dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] };
            Assert.Empty(SewingUp.Faults(TwoShells.Liner(SewingJobs.PiecesText(Lined(job, entry.Gap, entry.Hem))), SewingJobs.OrderOf(SewingJobs.Inner(Lined(job, entry.Gap, entry.Hem)))));
        });

    [Fact]
    public void Faults_RoofOverAHole_None()
    {
        // The cover's opening with 30 mm all round; carried over seams of the liner as over those of the cover.
        var order = new OpeningOrder("F2.05", 250, 40, 20, IsCarried: true) { Size = (700 + 60, 480 + 60), Corner = 60 + 30 };
        var wish = new OpeningWish(new OutlineWish(OutlineForm.Rounded) { Width = SewingJobs.Mm(700), Height = SewingJobs.Mm(480), Corner = SewingJobs.Mm(60) }, new OpeningPlace("F2.05", SewingJobs.Mm(250), SewingJobs.Mm(40)) { Turned = 20 }, LayingRule.Carried, SewingJobs.Mm(15)) { Sheet = "canvas", Lap = SewingJobs.Mm(20) };
        var job = Lined(Dome with { Openings = [wish] });
        job = job with { Liner = job.Liner! with { RoofRow = 4 } };

        var text = TwoShells.Liner(SewingJobs.PiecesText(job));

        Assert.Empty(OpenedCover.Faults(text, SewingJobs.OrderOf(SewingJobs.Inner(Lined(Dome))), order));
        // By hand: ring 3 of a 3V 5/8 has ten hubs and so ten struts; each is one zip with two sides.
        Assert.Equal(20, SewnFile.Read(text).Pieces.Sum(piece => SewnFile.Read(text).Patterns.Single(pattern => pattern.Id == piece.Pattern).Runs.Count(run => run.MakeUp == "liner zip")));
    }

    [Fact]
    public void Faults_HoleForAPipe_None()
    {
        var pipe = new PipeOrder("F4.02", 30, -20, IsLevel: false, 75, 150);
        var job = Lined(Dome with
        {
            Cloths = [.. Dome.Cloths, Dome.Cloths[0] with { Name = "heat", ServiceTemperature = 550 }],
            Pipes = [new PipeWish(new PipePlace(PipeRun.Vertical, pipe.Facet, SewingJobs.Mm(pipe.Right), SewingJobs.Mm(pipe.Up)), SewingJobs.Mm(150), SewingJobs.Mm(150), "heat") { Gap = SewingJobs.Mm(3), Sleeve = SewingJobs.Mm(150), TurnUnder = SewingJobs.Mm(15), Lap = SewingJobs.Mm(40), RainFlap = SewingJobs.Mm(60), ClosingFlap = SewingJobs.Mm(40) }],
        });
        var cover = TrueCover.Build(SewingJobs.OrderOf(Dome).Sizes);

        var text = SewingJobs.PiecesText(job);

        // 20 mm beyond the clear distance, about the pipe's middle line, which stands where the cover has it, the ease taken back.
        var hole = pipe.Cylinder(cover, 75 + 150 + 20) with { Middle = 1 / 1.003 * TrueOpening.MiddleOf(cover, pipe.Cylinder(cover, 1)) };
        Assert.Empty(OpenedCover.Faults(TwoShells.Liner(text), SewingJobs.OrderOf(SewingJobs.Inner(Lined(Dome))), hole));
        Assert.Empty(PipedCover.Faults(TwoShells.Cover(text), SewingJobs.OrderOf(Dome), pipe));
    }

    [Theory]
    [InlineData(9, null, null, "liner.roofRow")]
    [InlineData(null, "O7", null, "liner.openings")]
    [InlineData(null, null, "Inner", "panels")]
    public void Make_WrongWish_IsAFault(int? roof, string? opening, string? group, string place)
    {
        var job = Lined(Dome);
        job = job with { Liner = job.Liner! with { RoofRow = roof, Openings = opening is null ? null : [opening] }, Panels = group is null ? [] : [new PanelWish(PanelForm.Group) { Name = group, Facets = ["F5.01", "F5.02"] }, new PanelWish(PanelForm.Facets)] };

        var fault = Assert.Single(Liner.Make(job, FrameBuilder.Build(job.Frame), new OpeningLaying([], [], []))!.Faults);

        Assert.Equal(place, fault.Place);
    }

    private static Job Lined(Job job, double gap = 50, double hem = 50) => job with { Liner = new LinerWish("canvas", SewingJobs.Mm(gap), SewingJobs.Mm(hem)) { Margin = SewingJobs.Mm(30) } };
}
