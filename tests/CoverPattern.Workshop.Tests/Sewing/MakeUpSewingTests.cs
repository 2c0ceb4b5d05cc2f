using System;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers whose seams are not all made alike sew up, and the assembler sees when one is made wrong.</summary>
public class MakeUpSewingTests
{
    private static readonly Job Closed = Dome(3, 5, 3657.6) with
    {
        Seam = new SeamWish(Named("fell", MakeUpForm.Felled, 13))
        {
            Others = [new SeamChoice(SeamSet.Uprights, [], Named("our zip", MakeUpForm.Zip, 20))],
            Closing = new ClosingWish(ClosingWish.Rear, SewingJobs.Mm(40), null),
        },
    };

    private static readonly string Good = SewingJobs.PiecesText(Closed);

    private static readonly Gen<Job> RandomJobs =
        from frequency in Gen.Int[1, 5]
        from rows in Gen.Int[1, 14]
        from radius in Gen.Double[2000, 8000]
        from forms in Gen.Enum<MakeUpForm>().Array[3]
        from shares in Gen.Double[0.005, 0.015].Array[4]
        from isRows in Gen.Bool.Array[0, 2]
        from closes in Gen.Bool
        let strut = 0.95 * radius / frequency
        let makeUps = forms.Select((form, i) => Named($"make-up {i}", form, shares[i] * strut)).ToArray()
        select Dome(frequency, Math.Min(rows, (3 * frequency) - 1), radius) with
        {
            Seam = new SeamWish(makeUps[0])
            {
                Others = [.. isRows.Select((isRow, i) => new SeamChoice(isRow ? SeamSet.Rows : SeamSet.Uprights, [], makeUps[i + 1]))],
                Closing = closes ? new ClosingWish(ClosingWish.Rear, SewingJobs.Mm(makeUps.Max(makeUp => makeUp.WidestSideMm) + (shares[3] * strut)), null) : null,
            },
        };

    [Fact]
    public void Faults_ZippedUprightsFelledRowsAndAClosingSeam_None() => Assert.Empty(SewingUp.Faults(Good, SewingJobs.OrderOf(Closed)));

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 3)]
    [InlineData(4, 7)]
    [InlineData(5, 8)]
    public void Faults_ClosingSeamOfAnyDome_None(int frequency, int rows)
    {
        var job = Dome(frequency, rows, 4000) with { Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(15)) with { Closing = new ClosingWish(ClosingWish.Rear, SewingJobs.Mm(40), null) } };

        Assert.Contains("plain, closing", SewingJobs.PiecesText(job), StringComparison.Ordinal);
        Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
    }

    [Theory]
    [InlineData(3, 5, "bands")]
    [InlineData(3, 5, "gores")]
    [InlineData(4, 7, "bands")]
    [InlineData(4, 7, "gores")]
    [InlineData(3, 5, "bands below")]
    public void Faults_ClosingSeamOverPanels_FoundWhereItRises(int frequency, int rows, string plan)
    {
        var job = Dome(frequency, rows, 4000);
        job = job with
        {
            Cloths = [job.Cloths[0] with { RollWidth = SewingJobs.Mm(20_000) }],
            Panels = plan switch
            {
                "gores" => [new PanelWish(PanelForm.Gores)],
                "bands" => [new PanelWish(PanelForm.Bands)],
                _ => [new PanelWish(PanelForm.Bands, new RowRange(1, 2)), new PanelWish(PanelForm.Facets)],
            },
            Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(15)) with { Closing = new ClosingWish(ClosingWish.Rear, SewingJobs.Mm(40), null) },
        };
        var (good, order) = (SewingJobs.PiecesText(job), SewingJobs.OrderOf(job));

        Assert.Empty(SewingUp.Faults(good, order));
        var planted = PlantedFaults.Plant(good, file => ((JsonNode)Closing(file).First())["makeUp"] = "plain");
        Assert.Contains(SewingUp.Faults(planted, order), fault => fault.Contains("ordered \"plain, closing\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_RandomTables_None() => RandomJobs.Sample(
        job => Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job))), iter: 30, print: job => SewingJobs.OrderOf(job).ToString());

    [Fact]
    public void Faults_ClosingAllowanceOnOneSideOnly_Found() =>
        AssertFound(file => Closing(file).First(run => (string)run["side"]! == "under")["allowanceMm"] = 20, "(seam, under) has an allowance of 20 mm, not 40");

    /// <summary>The run says 40 mm, but the cut line was drawn for 20.</summary>
    [Fact]
    public void Faults_ClosingAllowanceCutOnOneSideOnly_Found()
    {
        var narrow = Closed with { Seam = Closed.Seam with { Closing = null } };

        // What a piece beside the closing seam would look like without it: its cut line in the place of the wide one.
        var other = JsonNode.Parse(SewingJobs.PiecesText(narrow))!;
        AssertFound(
            file =>
            {
                var pattern = file.Patterns().Where(one => one.Runs().Any(IsClosing)).MaxBy(one => one.Runs().Where(IsClosing).Max(run => (double)run["lengthMm"]!))!;
                var label = (string)file.Pieces().First(piece => (string)piece["pattern"]! == (string)pattern["id"]!)["label"]!;
                var plain = other.PatternOf(other.PieceOf(label));
                var (corner, plainCorner) = (pattern["sewLine"]![0]!, plain["sewLine"]![0]!);
                var (x, y) = ((double)corner[0]! - (double)plainCorner[0]!, (double)corner[1]! - (double)plainCorner[1]!);
                pattern["cutLine"] = new JsonArray([.. plain["cutLine"]!.AsArray().Select(point => (JsonNode)new JsonArray((double)point![0]! + x, (double)point[1]! + y))]);
            },
            "in its middle the cut line misses the allowance of 40 mm");
    }

    [Fact]
    public void Faults_ClosingSeamMadeAsAnyOther_Found() => AssertFound(
        file =>
        {
            foreach (var run in Closing(file).ToArray())
            {
                (run["makeUp"], run["allowanceMm"]) = ("our zip", 20);
            }
        },
        "is \"our zip\", ordered \"our zip, closing\"");

    [Fact]
    public void Faults_OneUprightFelled_Found() => AssertFound(
        file =>
        {
            var run = file.Patterns().SelectMany(PlantedFaults.Runs).First(run => (string)run["makeUp"]! == "our zip" && (string)run["side"]! == "over");
            (run["makeUp"], run["allowanceMm"]) = ("fell", 13);
        },
        "is \"fell\", ordered \"our zip\"");

    [Fact]
    public void Faults_MakeUpOfNoTable_Found() =>
        AssertFound(file => file.Patterns().SelectMany(PlantedFaults.Runs).First(run => (string)run["makeUp"]! == "fell")["makeUp"] = "glue", "not NaN");

    [Fact]
    public void Faults_ClosingOrderedAndNotMade_Found()
    {
        var open = Closed with { Seam = Closed.Seam with { Closing = null } };

        Assert.Contains(SewingUp.Faults(SewingJobs.PiecesText(open), SewingJobs.OrderOf(Closed)), fault => fault.Contains("ordered \"our zip, closing\"", StringComparison.Ordinal));
    }

    private static bool IsClosing(JsonNode run) => ((string)run["makeUp"]!).EndsWith(", closing", StringComparison.Ordinal);

    private static System.Collections.Generic.IEnumerable<JsonNode> Closing(JsonNode file) => file.Patterns().SelectMany(PlantedFaults.Runs).Where(IsClosing);

    private static void AssertFound(Action<JsonNode> change, string words) => Assert.Contains(
        SewingUp.Faults(PlantedFaults.Plant(Good, change), SewingJobs.OrderOf(Closed)), fault => fault.Contains(words, StringComparison.Ordinal));

    private static MakeUp Named(string name, MakeUpForm form, double width) => MakeUp.Of(form, SewingJobs.Mm(width)) with { Name = name };

    private static Job Dome(int frequency, int rows, double radius) => SewingJobs.Dome(new CoverSizes(frequency, rows, radius, 25, 60, 0.003));
}
