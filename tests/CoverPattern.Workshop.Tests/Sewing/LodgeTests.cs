using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The sample with everything in, sewn up as one order; faults planted in each kind of part are found.</summary>
public class LodgeTests
{
    internal const string Name = "lodge-2v";

    private static readonly Lazy<(string Text, WholeOrder Order)> Lodge = new(() =>
    {
        var job = JobReader.Read(File.ReadAllBytes(Path.Combine(SampleFolder.Path, Name + ".json"))).Job!;
        var pieces = PieceStages.Run(job).Pieces!.Set;
        return (Encoding.UTF8.GetString(PiecesFile.Write(pieces)), WholeOrder.Of(job) with { Fittings = pieces.Fittings });
    });

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a bitten piece left out"] = (file => file.Remove(file.PieceOf("P2.06")), "cover: A part of F2.06 is covered 0 times"),
        ["a seam said longer"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("P1.12"))["runs"]![0]!, "lengthMm", 0.02), "cover:"),
        ["a seam drawn longer"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("P3.04"))["sewLine"]!, point => 1.0001 * point), "partners:"),
        ["the door's flap a thousandth larger"] = (file => Grow(file, "O1f", 1.001), "O1: O1"),
        ["the door's screen left out"] = (file => file.Remove(file.PieceOf("O1s")), "O1: There is no screen"),
        ["the large window's sheet a thousandth larger"] = (file => Grow(file, "O2p", 1.001), "O2: O2"),
        ["one side of a vent's zip longer"] = (file => Grow(file, "O3f", 1.0005), "O3: O3"),
        ["a vent's screen of a sewn side where it has teeth"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("O4s"))["runs"]![0]!, "allowanceMm", 7), "beyond the rim"),
        ["the high vent's flap left out"] = (file => file.Remove(file.PieceOf("O5f")), "O5: There is no flap"),
        ["a rim of a window aside"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("P2.02"))["cutouts"]![0]!["rim"]!, new FlatPoint(0.3, 0)), "off the outline"),
        ["a ring left out"] = (file => file.Remove(file.PieceOf("W2.05r")), "windows:"),
        ["a pane of another size than its fellows"] = (file => PaneOfItsOwn(file, "W2.11p"), "are not all alike"),
        ["the pipe's sleeve a thousandth larger"] = (file => Grow(file, "J1s", 1.001), "J1: The sleeve's girth"),
        ["the pipe's patch aside"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1p"))["cutouts"]![0]!["rim"]![3]!, new FlatPoint(0.1, 0)), "bend at other places"),
        ["a closing flap left out"] = (file => file.Remove(file.PieceOf("J1c")), "J1: 1 pieces of kind pipeFlap"),
        ["a length of the roof's flap left out"] = (file => file.Remove(file.AllPieces().First(piece => (string)file.PatternOf(piece)["kind"]! == "roofFlap")), "roof:"),
        ["a piece of the roof's screen left out"] = (file => file.Remove(file.PieceOf("MP3.02")), "roof:"),
        ["a piece of the liner left out"] = (file => file.Remove(file.PieceOf("IP1.12")), "liner:"),
        ["a hole of the liner aside"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("IP2.02"))["cutouts"]![0]!["rim"]!, new FlatPoint(0.3, 0)), "liner:"),
        ["a pad in a facet with a window"] = (file => file.AllPieces().First(piece => ((string)piece["label"]!)[0] == 'A')["label"] = "A2.02", "pads: Facet F2.02 has a pad"),
        ["an end of the bag left out"] = (file => file.Remove(file.PieceOf("Y2")), "bag:"),
    };

    public static IEnumerable<object[]> PlantedNames() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_WholeLodge_None() => Assert.Empty(WholeCover.Faults(Lodge.Value.Text, Lodge.Value.Order));

    [Theory]
    [MemberData(nameof(PlantedNames))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = WholeCover.Faults(PlantedFaults.Plant(Lodge.Value.Text, change), Lodge.Value.Order);

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Pieces_OfEachKind_AreAsManyAsTheJobAsks()
    {
        // By hand from the job file: a door with flap, screen, drip flap, threshold and three zips' strips; two vents with flap,
        // screen, drip flap and two strips each; a high vent with flap, hood and screen; a window over three facets; four round
        // windows with pane, ring and screen; one pipe; a bag of three; a roof of five facets with a screen of its own.
        var file = SewnFile.Read(Lodge.Value.Text);
        var count = file.Pieces.CountBy(piece => file.Patterns.First(pattern => pattern.Id == piece.Pattern).Kind).ToDictionary(StringComparer.Ordinal);

        Assert.Equal((4, 5, 4), (count["windowRing"], count["pane"], count["flap"]));
        Assert.Equal((1, 1, 1, 2), (count["hood"], count["pipePatch"], count["pipeSleeve"], count["pipeFlap"]));
        Assert.Equal((5, 3), (count["roofFlap"], count["bag"]));
        Assert.Equal(5 + 3 + 3, count["coverStrip"]);
        Assert.Equal(4 + 1 + 2 + 1, count["screen"]);

        // 40 facets, 14 of which hold an opening or the pipe's clear distance.
        Assert.Equal(40 - 14, count["pad"]);
        Assert.Equal(14, Lodge.Value.Order.WithoutPads(_ => false).Length);
        Assert.True(file.Pieces.Sum(piece => piece.Runs.Count(run => run.Partner is not null)) > 300);
    }

    private static void Grow(JsonNode file, string piece, double factor)
    {
        var pattern = file.PatternOf(file.PieceOf(piece));
        foreach (var list in new[] { "sewLine", "facets" })
        {
            PlantedFaults.MoveAll(pattern[list]!, point => factor * point);
        }

        foreach (var run in pattern.Runs())
        {
            PlantedFaults.Add(run, "lengthMm", (factor - 1) * (double)run["lengthMm"]!);
        }
    }

    /// <summary>Gives a pane a pattern of its own, a little larger.</summary>
    private static void PaneOfItsOwn(JsonNode file, string pane)
    {
        var piece = file.PieceOf(pane);
        var own = file.PatternOf(piece).DeepClone();
        own["id"] = "own";
        PlantedFaults.MoveAll(own["cutLine"]!, point => 1.0001 * point);
        file["patterns"]!.AsArray().Add(own);
        piece["pattern"] = "own";
    }
}
