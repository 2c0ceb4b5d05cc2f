using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Openings of any outline sewn up: over folds, seams and the finished edge they close, and every fault planted is found.</summary>
public class OpeningSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly OpeningOrder OverSeams = new("F2.05", 250, 40, 20, IsCarried: true) { Size = (700, 480), Corner = 60, Lap = 20 };
    private static readonly Job Good = Opened(Dome, OverSeams);
    private static readonly string GoodText = SewingJobs.PiecesText(Good);

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a rim moved on one piece"] = (file => Shift(file, "P2.05", new FlatPoint(0.3, 0)), "off the outline"),
        ["a sheet left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("O1p")), "which is not joined to it"),
        ["a rim's partner missing"] = (file => RimRun(file, "P2.05").AsObject().Remove("partner"), "has no partner"),
        ["two rims of the sheet swapped"] = (file => PlantedFaults.Swap(file.PieceOf("O1p").Runs().First(), file.PieceOf("O1p").Runs().Skip(1).First(), "partner"), "which is not joined to it"),
        ["a mark of the rim missing"] = (file => Marks(file, "P2.05").Remove(RimMark(file, "P2.05")), "marks do not meet"),
        ["a mark of the rim moved"] = (file => PlantedFaults.Add(RimMark(file, "P2.05"), "atMm", 0.2), "marks do not meet"),
        ["a rim said longer"] = (file => PlantedFaults.Add(RimOf(file, "P2.05"), "lengthMm", 0.02), "are to be sewn to"),
        ["less to turn under"] = (file => PlantedFaults.Add(RimOf(file, "P2.05"), "allowanceMm", -1), "to turn under"),
        ["a bitten piece left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("P2.06")), "is covered 0 times"),
        ["the sheet a thousandth larger"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("O1p"))["sewLine"]!, point => 1.001 * point), "bend at other places"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_RoundedOverSeams_None() => Assert.Empty(OpenedCover.Faults(GoodText, SewingJobs.OrderOf(Good), OverSeams));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = OpenedCover.Faults(PlantedFaults.Plant(GoodText, change), SewingJobs.OrderOf(Good), OverSeams);

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_OverFoldsSeamsHubsAndHem_None()
    {
        var wide = Dome with { Cloths = [.. Dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] };
        (Job Job, OpeningOrder Order)[] cases =
        [
            (Dome, new OpeningOrder("F3.07", 0, 0, 0, IsCarried: true) { Size = (400, 400), Corner = 200, Lap = 15 }),
            (Dome, new OpeningOrder("F1.05", 0, -280, 0, IsCarried: true) { Size = (500, 900) }),
            (Dome, new OpeningOrder("F3.07", 0, 0, 10, IsCarried: false) { Size = (2900, 2600), Corner = 300 }),
            (wide with { Panels = [new PanelWish(PanelForm.Bands)] }, OverSeams),
            (wide with { Panels = [new PanelWish(PanelForm.Bands)] }, new OpeningOrder("F2.03", 300, -20, 5, IsCarried: true) { Size = (900, 420), Lap = 20 }),
            (wide with { Panels = [new PanelWish(PanelForm.Gores)] }, new OpeningOrder("F1.05", 0, -250, 3, IsCarried: true) { Size = (600, 1000), Corner = 100 }),
        ];

        Assert.All(cases, entry =>
        {
            var job = Opened(entry.Job, entry.Order);
            Assert.Empty(FaultsOf(job));
            Assert.Empty(OpenedCover.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job), entry.Order));
        });
    }

    /// <summary>A corner that reaches a millimetre over an edge: over a seam nobody can turn so short a rim under, over a fold it is cut like any other.</summary>
    [Fact]
    public void Faults_CornerJustOverAnEdge_RefusedOverASeamSewnOverAFold()
    {
        var order = new OpeningOrder("F3.02", -10, -238.413, 0, IsCarried: true) { Size = (523.563, 376.942) };
        var job = Opened(Dome with { Cloths = [.. Dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] }, order);
        var bands = job with { Panels = [new PanelWish(PanelForm.Bands)] };

        Assert.Contains("O1 reaches 0.7 mm over a seam", string.Join(" / ", FaultsOf(job).Select(fault => fault.ToString())), StringComparison.Ordinal);
        Assert.Empty(FaultsOf(bands));
        Assert.Empty(OpenedCover.Faults(SewingJobs.PiecesText(bands), SewingJobs.OrderOf(bands), order));
    }

    [Fact]
    public void Faults_RandomOutlinesAtRandomPlaces_NoneWhereTheyFit()
    {
        var (laid, asked) = (0, 0);
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 15], Gen.Double[-500, 500], Gen.Double[-400, 400], Gen.Double[0, 180], Gen.Double[150, 900], Gen.Double[150, 900], Gen.Double[0, 1]).Sample(
            (row, number, right, up, turned, width, height, round) =>
            {
                var corner = round < 0.3 ? 0 : round / 2 * Math.Min(width, height);
                var order = new OpeningOrder(FormattableString.Invariant($"F{row}.{number:00}"), right, up, turned, IsCarried: true) { Size = (width, height), Corner = corner < 10 ? 0 : corner };
                var plan = Dome with { Panels = round > 0.6 ? [new PanelWish(PanelForm.Bands)] : [], Cloths = [.. Dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] };
                var job = Opened(plan, order);
                asked++;
                if (FaultsOf(job).Length == 0)
                {
                    laid++;
                    Assert.Empty(OpenedCover.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job), order));
                }
            },
            iter: 60,
            threads: 1);

        // Most places are too near to a hub or seam, or have no such facet; enough are not.
        Assert.InRange(laid, 6, asked);
    }

    private static Job Opened(Job job, OpeningOrder order) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear" }],
        Openings =
        [
            new OpeningWish(
                order.Corner == 0
                    ? new OutlineWish(OutlineForm.Rectangle) { Width = SewingJobs.Mm(order.Size.Width), Height = SewingJobs.Mm(order.Size.Height) }
                    : new OutlineWish(OutlineForm.Rounded) { Width = SewingJobs.Mm(order.Size.Width), Height = SewingJobs.Mm(order.Size.Height), Corner = SewingJobs.Mm(order.Corner) },
                new OpeningPlace(order.Facet, SewingJobs.Mm(order.Right), SewingJobs.Mm(order.Up)) { Turned = order.Turned },
                order.IsCarried ? LayingRule.Carried : LayingRule.Projected,
                SewingJobs.Mm(order.TurnUnder))
            {
                Sheet = order.Lap is null ? null : "clear",
                Lap = SewingJobs.Mm(order.Lap ?? 0),
            },
        ],
    };

    private static Fault[] FaultsOf(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var laid = OpeningLayer.Lay(job, frame, shell);
        return [.. laid.Faults, .. OpeningSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), laid.Openings)];
    }

    private static JsonArray Marks(JsonNode file, string piece) => file.PatternOf(file.PieceOf(piece))["notches"]!.AsArray();

    private static int RimIndex(JsonNode file, string piece) => file.PatternOf(file.PieceOf(piece))["runs"]!.AsArray().ToList().FindIndex(run => (string)run!["role"]! == "rim");

    private static JsonNode RimOf(JsonNode file, string piece) => file.PatternOf(file.PieceOf(piece))["runs"]![RimIndex(file, piece)]!;

    private static JsonNode RimRun(JsonNode file, string piece) => file.PieceOf(piece).Runs().ElementAt(RimIndex(file, piece));

    private static JsonNode RimMark(JsonNode file, string piece) => Marks(file, piece).First(mark => (int)mark!["run"]! == RimIndex(file, piece))!;

    /// <summary>Moves the points along a rim, but not its ends, on sew line and facet alike.</summary>
    private static void Shift(JsonNode file, string piece, FlatPoint step)
    {
        var pattern = file.PatternOf(file.PieceOf(piece));
        var (run, line) = (RimOf(file, piece), pattern["sewLine"]!.AsArray());
        var (from, to) = ((int)run["from"]!, (int)run["to"]!);
        for (var i = (from + 1) % line.Count; i != to; i = (i + 1) % line.Count)
        {
            var old = line[i]!.ToJsonString();
            PlantedFaults.MoveAll(line[i]!, step);
            foreach (var corner in pattern["facets"]!.AsArray().SelectMany(ring => ring!.AsArray()).Where(corner => corner!.ToJsonString() == old))
            {
                PlantedFaults.MoveAll(corner!, step);
            }
        }
    }
}
