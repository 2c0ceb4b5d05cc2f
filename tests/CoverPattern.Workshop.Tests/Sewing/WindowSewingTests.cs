using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Windows sewn up: good ones close, and every fault planted is found.</summary>
public class WindowSewingTests
{
    private static readonly Job Windowed = SewingJobs.Windowed(
        SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)) with { Covers = 2 },
        SewingJobs.Window(450, "F2.03", "F2.10", "F3.07"),
        SewingJobs.Window(450, "F4.02") with { Right = SewingJobs.Mm(40), Up = SewingJobs.Mm(-25) },
        SewingJobs.Window(300, "F3.12") with { Screen = null });

    private static readonly SewingOrder Order = SewingJobs.OrderOf(Windowed);
    private static readonly string Good = SewingJobs.PiecesText(Windowed);

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a ring a tenth larger"] = (file => Scale(Ring(file)["cutouts"]![0]!, 1 + (0.1 / 225)), "is off its circle"),
        ["a ring a tenth larger, by its length"] = (file => PlantedFaults.Add(Ring(file)["cutouts"]![0]!["run"]!, "lengthMm", 0.63), "mm of ring"),
        ["a ring too narrow"] = (file => Scale(Ring(file), 0.999), "outer edge of the ring"),
        ["a partner missing"] = (file => Rims(file).First().AsObject().Remove("partner"), "has no partner"),
        ["a partner of another window"] = (file => PlantedFaults.Swap(Rims(file).First(), Rims(file).Skip(1).First(), "partner"), "is joined to"),
        ["a window moved onto a strut"] = (file => PlantedFaults.MoveAll(Host(file)["cutouts"]!, new FlatPoint(200, 0)), "no rim has its middle"),
        ["a window a little aside"] = (file => PlantedFaults.MoveAll(Host(file)["cutouts"]!, new FlatPoint(0.1, 0)), "no rim has its middle"),
        ["a rim mark moved"] = (file => PlantedFaults.MoveAll(RimMark(file)["onSewLine"]!, new FlatPoint(0.2, 0.2)), "misses those of the rim"),
        ["a rim mark missing"] = (file => Host(file)["notches"]!.AsArray().Remove(RimMark(file)), "marks of the rim meet"),
        ["a hole cut too large"] = (file => Scale(Host(file)["cutouts"]![0]!["cutLine"]!, 1.01), "cut of the rim"),
        ["a hole forgotten"] = (ForgetHole, "rims, not 5"),
        ["a pane missing"] = (file => file["pieces"]!.AsArray().Remove(file.Pieces().First(piece => ((string)piece["label"]!).EndsWith('p'))), "that are a pane"),
        ["one screen larger"] = (file => Scale(file.Patterns().First(pattern => (string)pattern["kind"]! == "screen"), 1.0005), "not all alike"),
        ["a hole that runs backward"] = (Reverse, "runs clockwise"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_WindowsSewnIn_None() => Assert.Empty(SewingUp.Faults(Good, Order));

    [Fact]
    public void Faults_WindowsInBandsAndGores_None()
    {
        var wide = Windowed with { Cloths = [.. Windowed.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] };
        PanelWish[][] plans = [[new PanelWish(PanelForm.Bands)], [new PanelWish(PanelForm.Bands, new RowRange(1, 2)), new PanelWish(PanelForm.Facets)], [new PanelWish(PanelForm.Gores)]];

        Assert.All(plans, plan =>
        {
            var job = wide with { Panels = [.. plan] };
            Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = SewingUp.Faults(PlantedFaults.Plant(Good, change), Order);

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_RandomDomesSizesAndRows_None() => Gen.Select(
        Gen.Int[2, 4], Gen.Double[1500, 6000], Gen.Double[0, 40], Gen.Double[-0.005, 0.005], Gen.Double[0.1, 0.35], Gen.Int[2, 3]).Sample(
        (frequency, radius, standOff, ease, share, row) =>
        {
            var dome = SewingJobs.Dome(new CoverSizes(frequency, (3 * frequency) / 2, radius, standOff, 60, ease));
            // The inscribed circle of a facet is wider than 0.25 R / frequency on these domes.
            var aperture = Math.Max(60, share * radius / frequency);
            var letters = frequency == 2 && row == 3 ? "F3.05" : $"F{row}.05";
            var job = SewingJobs.Windowed(dome, SewingJobs.Window(aperture, letters, letters[..^1] + "3") with { TurnUnder = SewingJobs.Mm(10) });

            Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
        },
        iter: 15);

    private static JsonNode Ring(JsonNode file) => file.Patterns().First(pattern => (string)pattern["kind"]! == "windowRing");

    private static JsonNode Host(JsonNode file) => file.PatternOf(file.PieceOf("C1 P2.03"));

    private static JsonNode RimMark(JsonNode file) => Host(file)["notches"]!.AsArray().First(notch => (int)notch!["run"]! == Host(file)["runs"]!.AsArray().Count)!;

    private static IEnumerable<JsonNode> Rims(JsonNode file) => file.Pieces().Where(piece => piece["facets"]!.AsArray().Count > 0)
        .SelectMany(piece => piece.Runs()).Where(run => (string)run["role"]! == "rim");

    private static void Scale(JsonNode node, double factor) => PlantedFaults.MoveAll(node, point => factor * point);

    private static void ForgetHole(JsonNode file)
    {
        var host = Host(file);
        host["cutouts"]!.AsArray().Clear();
        foreach (var piece in file.Pieces().Where(piece => (string)piece["pattern"]! == (string)host["id"]!))
        {
            piece["runs"]!.AsArray().RemoveAt(piece["runs"]!.AsArray().Count - 1);
        }
    }

    private static void Reverse(JsonNode file)
    {
        var rim = Host(file)["cutouts"]![0]!;
        rim["rim"] = new JsonArray([.. rim["rim"]!.AsArray().Reverse().Select(point => point!.DeepClone())]);
    }
}
