using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The assembler must see every fault that it is there for; each is planted into a felled cover that sews up.</summary>
public class PlantedFaultTests
{
    private static readonly Job Felled = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)) with
    {
        Covers = 2,
        Seam = SeamWish.Of(MakeUpForm.Felled, SewingJobs.Mm(13)) with { StopAtHubs = true },
        Marks = new MarkWish(TieRule.Usual, SewingJobs.Mm(80), HubPatchPlace.Outside, SewingJobs.Mm(180), SewingJobs.Mm(260)),
    };

    private static readonly SewingOrder Order = SewingJobs.OrderOf(Felled);

    private static readonly string Good = SewingJobs.PiecesText(Felled);

    /// <summary>What is planted, and the words by which it has to be found.</summary>
    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["one piece mirrored"] = (file => file.Piece(50)["mirrored"] = true, "is mirrored"),
        ["two partners swapped in one piece"] = (
            file => PlantedFaults.Swap(file.Piece(60)["runs"]![0]!, file.Piece(60)["runs"]![1]!, "partner"), "but is joined to"),
        ["two pieces exchanged"] = (file => PlantedFaults.Swap(file.Piece(100), file.Piece(101), "facets"), "should be named for it"),
        ["a notch drawn elsewhere"] = (file => PlantedFaults.Add(file.Pattern(2)["notches"]![0]!, "atMm", 0.2), "is drawn elsewhere"),
        ["a notch missing"] = (file => file.Pattern(2)["notches"]!.AsArray().RemoveAt(1), "notches meet"),
        ["a notch slit too deep"] = (
            file => file.Pattern(2)["notches"]![0]!["inner"] = file.Pattern(2)["notches"]![0]!["onSewLine"]!.DeepClone(), "is slit"),
        ["an allowance side swapped"] = (file => SwapSide(file), "under meets under"),
        ["an allowance side swapped, seen on the cut line"] = (file => SwapSide(file), "in its middle the cut line misses"),
        ["a side swapped, allowance kept"] = (file => file.Patterns().SelectMany(PlantedFaults.Runs).First(run => IsOver(run) && (string)run["makeUp"]! == "felled")["side"] = "under", "has an allowance of"),
        ["a fold missing"] = (file => file.FirstWithSkirt()["folds"]!.AsArray().Clear(), "neither run nor fold"),
        ["a fold bent to another edge"] = (
            file => file.FirstWithSkirt()["folds"]![0]!["to"] = file.FirstWithSkirt()["facets"]![1]![0]!.DeepClone(), "does not lie between two facets"),
        ["a skirt cut off"] = (CutSkirtOff, "neither run nor fold"),
        ["a piece missing"] = (file => file.Remove(file.Piece(30)), "which is not there"),
        ["a piece of one cover missing"] = (file => file.Remove(file.Piece(110)), "has 0 pieces on"),
        ["a label doubled"] = (file => file.Piece(30)["label"] = (string)file.Piece(31)["label"]!, "stands on 2 pieces"),
        ["a cover's name wrong"] = (file => file.Piece(209)["label"] = "C3 P9.5", "pieces are of"),
        ["a partner on the other cover"] = (JoinToOtherCover, "which is not there"),
        ["a hem allowance wrong"] = (file => Hem(file)["allowanceMm"] = 38, "has an allowance of 38 mm, not 50"),
        ["a run length wrong"] = (file => PlantedFaults.Add(file.Pattern(3)["runs"]![1]!, "lengthMm", 0.02), "its corners lie"),
        ["a run to the wrong corner"] = (file => file.Pattern(3)["runs"]![1]!["to"] = 0, "a gap"),
        ["a grain line turned"] = (file => file.Pattern(4)["grain"]!["to"] = file.Pattern(4)["sewLine"]![0]!.DeepClone(), "not along +x"),
        ["a pattern turned on its grain"] = (file => PlantedFaults.Move(file.Pattern(4), point => new FlatPoint(-point.Y, point.X)), "the warp leaves"),
        ["a pattern drawn seen from inside"] = (file => PlantedFaults.Move(file.Pattern(4), point => new FlatPoint(point.X, -point.Y)), "does not run counter-clockwise"),
        ["all patterns a tenth of a millimetre wide"] = (Stretch, "off the cover"),
        ["a quantity wrong"] = (file => file.Pattern(0)["quantity"] = 1, "is to be cut 1 times"),
        ["a hem called a seam"] = (file => Hem(file)["role"] = "seam", "on the pattern a seam"),
        ["an edge without partner"] = (file => file.Piece(70)["runs"]![0]!.AsObject().Remove("partner"), "has no partner"),
        ["a seam called a rim"] = (CallRim, "is a rim where the cover has a seam"),
        ["a tie a millimetre off on one side"] = (file => MoveTie(file, 1), "the tie of"),
        ["a tie at another distance"] = (file => MoveTie(file, 1), "is not 80 mm from a hub"),
        ["a tie missing on one side"] = (file => Tied(file)["drills"]!.AsArray().Remove(Tied(file)["drills"]!.AsArray().First(IsTie)), "has none to meet"),
        ["a stop not marked"] = (file => file.Pattern(1)["lines"]!.AsArray().Remove(file.Pattern(1)["lines"]!.AsArray().First(IsStop)), "should stop at"),
        ["a stop marked elsewhere"] = (file => file.Pattern(1)["lines"]!.AsArray().First(IsStop)!["path"]![0] = file.Pattern(1)["sewLine"]![0]!.DeepClone(), "should stop at"),
        ["a cut line that does not step in"] = (FillStep, "the cut line does not step"),
        ["a patch drawn beyond the cloth"] = (file => file.Pattern(1)["lines"]!.AsArray().First(IsPatch)!["path"]![0] = new JsonArray(-50, -50), "outside the cut line"),
        ["a pivot where nothing bends"] = (file => file.Pattern(1)["drills"]!.AsArray().Add(Drill(file.Pattern(1)["sewLine"]![0]!, "pivot")), "has 1 pivot marks"),
        ["a tie pierced though none was asked for"] = (file => Tied(file)["drills"]!.AsArray().First(IsTie)!["pierced"] = true, "pierced though"),
        ["a patch of a hub missing"] = (file => file.Remove(file.PieceOf("C1 H3.02-out")), "at C1 H3.02 are not the 1"),
        ["a patch of a hub smaller than drawn"] = (file => file.PieceOf("C2 H3.02-out")["pattern"] = (string)file.PieceOf("C2 H5.01-out")["pattern"]!, "at C2 H3.02 are not the 1"),
        ["a seam with two names"] = (file => file.Piece(70)["runs"]![0]!["arc"] = "S999", "by S"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_NothingPlanted_None() => Assert.Empty(SewingUp.Faults(Good, Order));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = SewingUp.Faults(PlantedFaults.Plant(Good, change), Order);

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    /// <summary>On cloth without face a mirrored piece is no fault in itself: its neighbours must tell.</summary>
    [Fact]
    public void Faults_AnyPieceMirroredOnClothWithoutFace_FoundByItsNeighbours()
    {
        // Every fifth piece: rows of 30, 30, 25, 15 and 5 pieces all have some among them.
        for (var piece = 0; piece < 105; piece += 5)
        {
            var text = PlantedFaults.Plant(Good, file => file.Piece(piece)["mirrored"] = true);

            Assert.NotEmpty(SewingUp.Faults(text, Order with { HasFace = false }));
        }
    }

    [Fact]
    public void Faults_AnyRunsFirstNotchMoved_FoundByItsPartner()
    {
        var patterns = SewnFile.Read(Good).Patterns;
        foreach (var (pattern, i) in patterns.Select((pattern, i) => (pattern, i)))
        {
            foreach (var notch in pattern.Notches.Select((notch, at) => (notch.Run, at)).DistinctBy(entry => entry.Run).Select(entry => entry.at))
            {
                var text = PlantedFaults.Plant(Good, file => PlantedFaults.MoveNotch(file.Pattern(i), notch, 0.2));

                Assert.Contains(SewingUp.Faults(text, Order), fault => fault.Contains("misses its partner", StringComparison.Ordinal));
            }
        }
    }

    /// <summary>Both seams agree with themselves; only where they lie on the cover is wrong.</summary>
    [Fact]
    public void Faults_TwoSeamsExchanged_Found()
    {
        var text = PlantedFaults.Plant(Good, file => PlantedFaults.ExchangePartners(
            file, PlantedFaults.Seams(file.Piece(61)).First(), PlantedFaults.Seams(file.Piece(71)).First()));

        var faults = SewingUp.Faults(text, Order);

        Assert.Contains(faults, fault => fault.Contains("but is joined to", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("mm apart", StringComparison.Ordinal));
    }

    /// <summary>Plain seams have one allowance, so that nothing but the height of the facets tells over from under.</summary>
    [Fact]
    public void Faults_AllSidesSwapped_Found()
    {
        var plain = Felled with { Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(13)) };
        var text = SewingJobs.PiecesText(plain).Replace("\"over\"", "\"?\"", StringComparison.Ordinal)
            .Replace("\"under\"", "\"over\"", StringComparison.Ordinal).Replace("\"?\"", "\"under\"", StringComparison.Ordinal);

        Assert.Contains(SewingUp.Faults(text, SewingJobs.OrderOf(plain)), fault => fault.Contains("the first should lie", StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_OtherSizesOrdered_Found()
    {
        Assert.NotEmpty(SewingUp.Faults(Good, Order with { Sizes = Order.Sizes with { Ease = 0.0031 } }));
        Assert.NotEmpty(SewingUp.Faults(Good, Order with { Sizes = Order.Sizes with { StandOff = 24.9 } }));
        Assert.NotEmpty(SewingUp.Faults(Good, Order with { Sizes = Order.Sizes with { Drop = 60.1 } }));
        Assert.NotEmpty(SewingUp.Faults(Good, Order with { Sizes = Order.Sizes with { Rows = 4 } }));
    }

    private static bool IsTie(JsonNode? drill) => (string)drill!["purpose"]! == "tie";

    private static bool IsStop(JsonNode? line) => (string)line!["purpose"]! == "stop";

    private static bool IsPatch(JsonNode? line) => (string)line!["purpose"]! == "patch";

    private static JsonNode Tied(JsonNode file) => file.Patterns().First(pattern => pattern["drills"]!.AsArray().Any(IsTie));

    private static JsonObject Drill(JsonNode at, string purpose) => new() { ["at"] = at.DeepClone(), ["purpose"] = purpose, ["pierced"] = false };

    /// <summary>The first tie of a pattern, moved along its seam.</summary>
    private static void MoveTie(JsonNode file, double step)
    {
        var pattern = Tied(file);
        var tie = pattern["drills"]!.AsArray().First(IsTie)!;
        var at = new FlatPoint((double)tie["at"]![0]!, (double)tie["at"]![1]!);
        foreach (var run in pattern.Runs())
        {
            var (from, to) = (Corner(pattern, run, "from"), Corner(pattern, run, "to"));
            if (Math.Abs((to - from).Cross(at - from)) < 0.002 * from.DistanceTo(to))
            {
                var moved = at + ((step / from.DistanceTo(to)) * (to - from));
                tie["at"] = new JsonArray(moved.X, moved.Y);
            }
        }
    }

    private static FlatPoint Corner(JsonNode pattern, JsonNode run, string end)
    {
        var point = pattern["sewLine"]![(int)run[end]!]!;
        return new FlatPoint((double)point[0]!, (double)point[1]!);
    }

    /// <summary>Takes out the two corners of the cut line at the stop of an under side.</summary>
    private static void FillStep(JsonNode file)
    {
        var pattern = file.Patterns().First(one => one.Runs().Any(run => (string)run["side"]! == "under" && (string)run["makeUp"]! == "felled"));
        var cut = pattern["cutLine"]!.AsArray();
        foreach (var line in pattern["lines"]!.AsArray().Where(IsStop))
        {
            var outer = line!["path"]![1]!;
            foreach (var corner in cut.Where(corner => Math.Abs((double)corner![0]! - (double)outer[0]!) + Math.Abs((double)corner[1]! - (double)outer[1]!) < 0.01).ToArray())
            {
                cut.Remove(corner);
            }
        }
    }

    private static bool IsOver(JsonNode run) => (string)run["side"]! == "over";

    private static JsonNode Hem(JsonNode file) => file.FirstWithSkirt().Runs().First(run => (string)run["role"]! == "hem");

    private static void SwapSide(JsonNode file)
    {
        var run = file.Patterns().SelectMany(PlantedFaults.Runs).Where(IsOver).MaxBy(over => (double)over["lengthMm"]!)!;
        (run["side"], run["allowanceMm"]) = ("under", 2 * (double)run["allowanceMm"]!);
    }

    private static void CutSkirtOff(JsonNode file)
    {
        var pattern = file.FirstWithSkirt();
        pattern["facets"]!.AsArray().RemoveAt(1);
        pattern["folds"]!.AsArray().Clear();
        foreach (var piece in file.Pieces().Where(piece => (string)piece["pattern"]! == (string)pattern["id"]!))
        {
            piece["facets"]!.AsArray().RemoveAt(1);
        }
    }

    private static void JoinToOtherCover(JsonNode file)
    {
        var partner = PlantedFaults.Seams(file.Piece(80)).First()["partner"]!;
        partner["piece"] = "C2" + ((string)partner["piece"]!)[2..];
    }

    private static void Stretch(JsonNode file)
    {
        foreach (var pattern in file.Patterns())
        {
            PlantedFaults.Move(pattern, point => 1.0001 * point);
            foreach (var run in pattern.Runs())
            {
                run["lengthMm"] = 1.0001 * (double)run["lengthMm"]!;
            }

            foreach (var notch in pattern["notches"]!.AsArray())
            {
                notch!["atMm"] = 1.0001 * (double)notch["atMm"]!;
            }
        }
    }

    private static void CallRim(JsonNode file)
    {
        var piece = file.Piece(0);
        var pattern = file.PatternOf(piece);
        var run = pattern.Runs().ToList().FindIndex(IsOver);
        (pattern["runs"]![run]!["role"], pattern["runs"]![run]!["side"]) = ("rim", "none");
        foreach (var one in file.Pieces().Where(one => (string)one["pattern"]! == (string)piece["pattern"]!))
        {
            one["runs"]![run]!["role"] = "rim";
            one["runs"]![run]!.AsObject().Remove("partner");
        }
    }
}
