using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers of bands, gores and groups sew up, and the assembler sees what is wrong with one.</summary>
public class SewnPlanTests
{
    private static readonly Job ThreeV = Wide(SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)) with { Seam = SeamWish.Of(MakeUpForm.Felled, SewingJobs.Mm(13)) });

    private static readonly PanelWish Bands = new(PanelForm.Bands);

    private static readonly PanelWish Rest = new(PanelForm.Facets);

    private static readonly Dictionary<string, PanelWish[]> Plans = new(StringComparer.Ordinal)
    {
        ["bands"] = [Bands],
        ["bands in one part"] = [Bands with { Parts = 1 }],
        ["bands in seven parts"] = [Bands with { Parts = 5, Rows = new RowRange(5, 5) }, Bands with { Parts = 7 }],
        ["bands cut elsewhere"] = [Bands with { At = ["H1.02-H2.02"] }],
        ["bands of three metres"] = [Bands with { Longest = SewingJobs.Mm(3000) }],
        ["gores"] = [new PanelWish(PanelForm.Gores)],
        ["gores slit by wish"] = [new PanelWish(PanelForm.Gores) { Slits = ["H1.01-H1.02", "H1.03-H2.04", "H2.01-H2.02", "H2.03-H2.04", "H3.01-H3.02"] }],
        ["bands below, facets above"] = [Bands with { Rows = new RowRange(1, 3) }, Rest],
        ["gores above, bands below"] = [new PanelWish(PanelForm.Gores, new RowRange(3, 5)), Bands],
        ["a roof and a slit rose"] = [Group("roof", "F5.01", "F5.02", "F5.03", "F5.04", "F5.05") with { Slits = ["H4.01-H5.01"] }, Group("", "F1.01", "F1.02", "F1.03"), Rest],
    };

    public static IEnumerable<object[]> Names() => Plans.Keys.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Plan_None(string name)
    {
        var job = ThreeV with { Panels = [.. Plans[name]] };

        Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
        var oneWay = job with { Cloths = [job.Cloths[0] with { Nap = Nap.OneWay }], Covers = 2 };
        Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(oneWay), SewingJobs.OrderOf(oneWay)));
    }

    [Fact]
    public void Faults_TurnedSeam_OnlyAsOrdered()
    {
        // The upright of row 1 at the front, between its first facet and its last one.
        var job = ThreeV with { Panels = [Bands], Seam = ThreeV.Seam with { Turned = ["H0.01-H1.01"] } };
        var order = SewingJobs.OrderOf(job);
        var faces = TrueCover.Build(order.Sizes).Faces;
        var text = SewingJobs.PiecesText(job);

        var faults = SewingUp.Faults(text, order);

        var two = faults.Where(fault => fault.Contains("the first should lie", StringComparison.Ordinal)).ToArray();
        Assert.Equal((2, 2), (faults.Count, two.Length));
        var pairs = faces.Values.SelectMany(face => face.Edges.Where(edge => edge.Neighbour is not null).Select(edge => SewnPlan.Pair(face.Label, edge.Neighbour!))).Distinct(StringComparer.Ordinal);
        Assert.Single(pairs, pair => SewingUp.Faults(text, order with { Plan = order.Plan with { Turned = new HashSet<string>([pair], StringComparer.Ordinal) } }).Count == 0);
    }

    /// <summary>What is planted into which plan, and the words by which it has to be found.</summary>
    private static readonly Dictionary<string, (string Plan, Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["two folds swapped"] = ("bands", SwapFolds, "fold"),
        ["facets in another order"] = ("bands", file => Swap(file.PieceOf("B2.3")["facets"]!, 0, 2), "off the cover"),
        ["a slit joined to the wrong partner"] = ("gores", file => ExchangeSlits(file), "mm apart"),
        ["an upright turned"] = ("bands", TurnUpright, "the first should lie"),
        ["a band drawn across the warp"] = ("bands", file => PlantedFaults.Move(file.PatternOf(file.PieceOf("B2.3")), point => new FlatPoint(-point.Y, point.X)), "would do"),
        ["a piece of one row called another's"] = ("bands", file => Rename(file, "B2.3", "B3.9"), "Band B3.9 covers"),
        ["a strip that belongs elsewhere"] = ("bands", file => Rename(file, "B1.2k", "B2.2k"), "hangs below pieces it is not named for"),
    };

    /// <summary>What is planted into rows in five parts cut elsewhere than at the sector edges, which have inside corners.</summary>
    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> PlantedAtCorners = new(StringComparer.Ordinal)
    {
        ["a clip through the sew line"] = (file => Clipped(file)["lines"]!.AsArray().First(IsClip)!["path"]![1] = Inward(file), "runs through the sew line"),
        ["a clip that ends too soon"] = (file => Clipped(file)["lines"]!.AsArray().First(IsClip)!["path"]![1] = Clipped(file)["lines"]!.AsArray().First(IsClip)!["path"]![0]!.DeepClone(), "mm from the corner"),
        ["a clip patch missing"] = (file => file.Remove(file.AllPieces().First(IsClipPatch)), "0 patches of"),
        ["a clip patch for another hub"] = (file => file.AllPieces().First(IsClipPatch)["label"] = "H1.01-clip9", "clips drawn at H1.01"),
        ["a clip patch not drawn"] = (file => Clipped(file)["lines"]!.AsArray().Remove(Clipped(file)["lines"]!.AsArray().First(line => (string)line!["purpose"]! == "clip patch")), "no patch is drawn"),
        ["a pivot without a hole though it is covered"] = (file => Clipped(file)["drills"]!.AsArray().First(drill => (string)drill!["purpose"]! == "pivot")!["pierced"] = false, "was to be pierced"),
    };

    public static IEnumerable<object[]> CornerNames() => PlantedAtCorners.Keys.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(CornerNames))]
    public void Faults_PlantedAtInsideCorners_Found(string name)
    {
        var (change, found) = PlantedAtCorners[name];
        var job = ThreeV with { Panels = [.. Plans["bands in seven parts"]], Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(13)), Marks = MarkWish.Bare with { Pierce = true } };
        var good = SewingJobs.PiecesText(job);

        var faults = SewingUp.Faults(PlantedFaults.Plant(good, change), SewingJobs.OrderOf(job));

        Assert.Empty(SewingUp.Faults(good, SewingJobs.OrderOf(job)));
        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(2, 3, MakeUpForm.Felled)]
    [InlineData(2, 3, MakeUpForm.FolderFelled)]
    [InlineData(3, 5, MakeUpForm.Felled)]
    [InlineData(3, 5, MakeUpForm.FolderFelled)]
    [InlineData(4, 6, MakeUpForm.Felled)]
    public void Faults_FelledGores_StopAtHubsButNotInTheEndsOfSlits(int frequency, int rows, MakeUpForm form)
    {
        // The gap of a slit opens by the hub's defect alone: 30 mm from its end there is no room for 15 mm on either side, nor anything cut.
        var job = Wide(SewingJobs.Dome(new CoverSizes(frequency, rows, 3657.6, 25, 120, 0.003))) with
        {
            Panels = [new PanelWish(PanelForm.Gores)],
            Seam = SeamWish.Of(form, SewingJobs.Mm(15)) with { StopAtHubs = true },
        };

        Assert.Empty(SewingJobs.Finish(job).Faults);
        Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
    }

    public static IEnumerable<object[]> PlantedNames() => Planted.Keys.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(PlantedNames))]
    public void Faults_Planted_Found(string name)
    {
        var (plan, change, found) = Planted[name];
        var job = ThreeV with { Panels = [.. Plans[plan]], Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(13)) };

        var faults = SewingUp.Faults(PlantedFaults.Plant(SewingJobs.PiecesText(job), change), SewingJobs.OrderOf(job));

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_ThirtyRandomPlans_None() => RandomPlans.Jobs.Sample(Sews, iter: 30, print: RandomPlans.Told);

    [Fact]
    [Trait("Category", "Long")]
    public void Faults_TwoHundredRandomPlans_None() => RandomPlans.Jobs.Sample(Sews, iter: 200, print: RandomPlans.Told);

    private static void Sews(Job job)
    {
        var faults = SewingJobs.Finish(job).Faults;
        if (faults.IsEmpty)
        {
            Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
        }
        else
        {
            // Slits may be too narrow for wide seams, and skirt strips too low: the job is refused, not cut wrongly.
            var crossing = faults.Where(fault => !fault.Allowed.Contains("a skirt strip must hold", StringComparison.Ordinal)).ToArray();
            Assert.All(crossing, fault => Assert.Contains("cross each other", fault.Allowed, StringComparison.Ordinal));
            Assert.True(crossing.Length == 0 || job.Skirt.Drop.Millimetres < 100 || job.Panels.Any(panel => panel.Form is PanelForm.Gores or PanelForm.Group || panel.Parts is not null));
        }
    }

    private static bool IsClip(JsonNode? line) => (string)line!["purpose"]! == "clip";

    private static bool IsClipPatch(JsonNode piece) => ((string)piece["label"]!).Contains("-clip", StringComparison.Ordinal);

    private static JsonNode Clipped(JsonNode file) => file.Patterns().First(pattern => pattern["lines"]!.AsArray().Any(IsClip));

    /// <summary>As far beyond the sew line's corner as the clip ends short of it.</summary>
    private static JsonArray Inward(JsonNode file)
    {
        var path = Clipped(file)["lines"]!.AsArray().First(IsClip)!["path"]!;
        var (outer, inner) = (new FlatPoint((double)path[0]![0]!, (double)path[0]![1]!), new FlatPoint((double)path[1]![0]!, (double)path[1]![1]!));
        var beyond = inner + ((4 / outer.DistanceTo(inner)) * (inner - outer));
        return new JsonArray(beyond.X, beyond.Y);
    }

    private static PanelWish Group(string name, params string[] facets) => new(PanelForm.Group) { Name = name, Facets = [.. facets] };

    /// <summary>On cloth so wide that everything fits.</summary>
    private static Job Wide(Job job) => job with { Cloths = [job.Cloths[0] with { RollWidth = SewingJobs.Mm(20_000) }] };

    private static void Swap(JsonNode list, int left, int right)
    {
        var (first, second) = (list[left]!.DeepClone(), list[right]!.DeepClone());
        (list[left], list[right]) = (second, first);
    }

    /// <summary>Two folds exchange their lower ends: each lies across a facet then.</summary>
    private static void SwapFolds(JsonNode file)
    {
        var folds = file.PatternOf(file.PieceOf("B2.3"))["folds"]!;
        PlantedFaults.Swap(folds[0]!, folds[2]!, "to");
    }

    private static void ExchangeSlits(JsonNode file)
    {
        var gore = file.PieceOf("G3");
        JsonNode[] slits = [.. gore.Runs().Where(run => run["partner"] is { } partner && (string)partner["piece"]! == "G3")];
        PlantedFaults.ExchangePartners(file, slits[0], slits.First(run => (string)run["arc"]! != (string)slits[0]["arc"]!));
    }

    private static void TurnUpright(JsonNode file)
    {
        // Both sides of the upright, so that over still meets under; all five parts of the row are of one pattern.
        var (piece, pattern) = (file.PieceOf("B2.3"), file.PatternOf(file.PieceOf("B2.3")));
        for (var run = 0; run < pattern["runs"]!.AsArray().Count; run++)
        {
            if (piece["runs"]![run]!["partner"] is { } partner && ((string)partner["piece"]!).StartsWith("B2", StringComparison.Ordinal))
            {
                var side = pattern["runs"]![run]!;
                side["side"] = (string)side["side"]! == "over" ? "under" : "over";
            }
        }
    }

    private static void Rename(JsonNode file, string from, string to)
    {
        file.PieceOf(from)["label"] = to;
        foreach (var partner in file.Pieces().SelectMany(PlantedFaults.Runs).Select(run => run["partner"]).OfType<JsonNode>().Where(partner => (string)partner["piece"]! == from))
        {
            partner["piece"] = to;
        }
    }
}
