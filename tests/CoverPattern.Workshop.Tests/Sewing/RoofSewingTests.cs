using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers with a roof that comes off sewn up, and every fault planted in them found.</summary>
public class RoofSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly Job Good = Roofed(Dome, 4, screen: true);
    private static readonly string GoodText = SewingJobs.PiecesText(Good);
    private static readonly string Arc = (string)JsonNode.Parse(GoodText)!.PieceOf("P4.01").Runs().First()["arc"]!;

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a length of flap left out"] = (file => file.Remove(file.PieceOf(Arc + "f")), "no flap"),
        ["a flap longer"] = (file => PlantedFaults.MoveAll(Flap(file)["sewLine"]!, point => new FlatPoint(1.0001 * point.X, point.Y)), "mm on"),
        ["a flap said longer"] = (file => PlantedFaults.Add(Flap(file)["runs"]![2]!, "lengthMm", 0.02), "mm on"),
        ["a flap wider"] = (file => PlantedFaults.MoveAll(Flap(file)["sewLine"]!, point => new FlatPoint(point.X, 1.001 * point.Y)), "mm wide"),
        ["a flap's end cut square"] = (file => Flap(file)["sewLine"]![1]![0] = (double)Flap(file)["sewLine"]![2]![0]!, "half of the wall"),
        ["ends of the flap exchanged"] = (file => PlantedFaults.Swap(file.PieceOf(Arc + "f").Runs().ElementAt(1), file.PieceOf(Arc + "f").Runs().ElementAt(3), "partner"), "is sewn to"),
        ["a tab left out on the roof"] = (file => Drop(file, "P4.01", "lines", "load tab"), "do not meet"),
        ["a tab of the wall moved"] = (file => PlantedFaults.MoveAll(Mark(file, "P3.02", "lines", "load tab")["path"]!, new FlatPoint(0.2, 0)), "do not meet"),
        ["pin and box exchanged"] = (file => Mark(file, "P4.01", "drills", "zip: pin side")["purpose"] = "zip: box side", "pin and box"),
        ["the box not told"] = (file => Drop(file, "P3.02", "drills", "zip: box side"), "pin and box"),
        ["the flap's place not shown"] = (file => Drop(file, "P3.02", "lines", "edge of the roof's flap"), "where the flap ends"),
        ["a piece of the screen left out"] = (file => file.Remove(file.PieceOf("MP4.01")), "no screen"),
        ["the screen larger"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("MP4.01"))["sewLine"]!, point => 1.00001 * point), "mm2, not"),
        ["the screen's zip said longer"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("MP4.01"))["runs"]![0]!, "lengthMm", 0.02), "the screen has"),
        ["a plain seam between roof and wall"] = (file => file.PatternOf(file.PieceOf("P4.01"))["runs"]![0]!["makeUp"] = "plain", "roof zips"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_RoofOfRows_None() => Assert.Empty(Faults(GoodText, Good));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        Assert.Contains(Of(PlantedFaults.Plant(GoodText, change), Good), fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_RoofOfNamedFacets_None()
    {
        // Five facets round the top and one more: the line turns sharply both ways, and lies partly between facets of one row.
        var job = Roofed(Dome, 0, screen: false, flap: 120) with { };
        job = job with { Roof = job.Roof! with { Row = null, Facets = ["F5.01", "F5.02", "F5.03", "F5.04", "F5.05", "F4.02"] } };

        Assert.Empty(Faults(SewingJobs.PiecesText(job), job));
    }

    [Fact]
    public void Faults_OtherDomesAndPlans_None() => Assert.All(
        new[]
        {
            (new CoverSizes(2, 3, 2500, 20, 0, 0), PanelForm.Facets, 2, false),
            (new CoverSizes(4, 7, 4000, 30, 80, 0.002), PanelForm.Bands, 5, true),
            (new CoverSizes(3, 4, 3000, 25, 60, -0.001), PanelForm.Facets, 3, true),
        },
        entry =>
        {
            var (sizes, form, row, screen) = entry;
            var job = Roofed(SewingJobs.Dome(sizes) with { Panels = form == PanelForm.Facets ? [] : [new PanelWish(form)] }, row, screen);
            Assert.Empty(Faults(SewingJobs.PiecesText(job), job));
        });

    [Fact]
    public void Faults_FelledSeamsThatStopAndPatches_None()
    {
        var felled = Roofed(Dome, 4, screen: false) with
        {
            Seam = SeamWish.Of(MakeUpForm.Felled, SewingJobs.Mm(12)) with { StopAtHubs = true },
            Marks = new MarkWish(TieRule.Every, SewingJobs.Mm(40), HubPatchPlace.Inside, SewingJobs.Mm(120), SewingJobs.Mm(200)),
        };

        Assert.Empty(Faults(SewingJobs.PiecesText(felled), felled));
    }

    private static JsonNode Flap(JsonNode file) => file.PatternOf(file.PieceOf(Arc + "f"));

    private static JsonNode Mark(JsonNode file, string piece, string list, string purpose) => file.PatternOf(file.PieceOf(piece))[list]!.AsArray().First(mark => (string)mark!["purpose"]! == purpose)!;

    private static void Drop(JsonNode file, string piece, string list, string purpose) => file.PatternOf(file.PieceOf(piece))[list]!.AsArray().Remove(Mark(file, piece, list, purpose));

    private static Job Roofed(Job job, int row, bool screen, double flap = 100) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "mesh" }],
        Roof = new RoofWish(SewingJobs.Mm(flap), SewingJobs.Mm(750), SewingJobs.Mm(50)) { Row = row, Screen = screen ? "mesh" : null },
    };

    /// <summary>The whole cover sewn up, and what the roof asks for beside.</summary>
    internal static IEnumerable<string> Faults(string text, Job job)
    {
        var order = SewingJobs.OrderOf(job);
        return [.. SewingUp.Faults(WithoutScreen(text), order with { Plan = order.Plan with { Roof = RoofOf(job) } }), .. Of(text, job)];
    }

    private static IEnumerable<string> Of(string text, Job job) => new RoofFaults(
        SewnFile.Read(text), TrueCover.Build(SewingJobs.OrderOf(job).Sizes), RoofOf(job), new RoofOrder(job.Roof!.Flap.Millimetres, job.Roof.Tabs.Millimetres, job.Roof.Screen is not null)).Find();

    private static HashSet<string> RoofOf(Job job) => job.Roof!.Row is { } row
        ? [.. TrueCover.Build(SewingJobs.OrderOf(job).Sizes).Faces.Keys.Where(face => SewnPlan.RowOf(face) >= row)]
        : [.. job.Roof.Facets];

    private static string WithoutScreen(string text)
    {
        var file = JsonNode.Parse(text)!;
        foreach (var (list, field) in new[] { ("patterns", "id"), ("pieces", "label") })
        {
            foreach (var mesh in file[list]!.AsArray().Where(item => ((string)item![field]!).StartsWith('M')).ToArray())
            {
                file[list]!.AsArray().Remove(mesh);
            }
        }

        return file.ToJsonString();
    }
}
