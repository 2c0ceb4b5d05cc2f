using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Ground flap and bag sewn up, and every fault planted in them found.</summary>
public class ExtraSewingTests
{
    private const double Width = 300;
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly Job Good = Dome with { GroundFlap = new GroundFlapWish("canvas", SewingJobs.Mm(Width), IsInward: false), Bag = new BagWish("canvas", (SewingJobs.Mm(900), SewingJobs.Mm(400), SewingJobs.Mm(350)), 1) };
    private static readonly string GoodText = SewingJobs.PiecesText(Good);

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a strip left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("N003")), "has no strip"),
        ["a gusset left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("N003g")), "gussets do not fill"),
        ["a strip's partner missing"] = (file => file.PieceOf("N003").Runs().First(run => (string)run["arc"]! is ['E', ..]).AsObject().Remove("partner"), "has no strip"),
        ["a strip wider"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("N003"))["sewLine"]!, point => new FlatPoint(point.X, 1.01 * point.Y)), "mm2, not"),
        ["a strip said longer"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("N003"))["runs"]![2]!, "lengthMm", 0.02), "along a hem of"),
        ["a gusset flatter"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("N003g"))["sewLine"]!, point => new FlatPoint(1.01 * point.X, point.Y)), "gussets do not fill"),
        ["two sides of strips exchanged"] = (file => PlantedFaults.Swap(file.PieceOf("N003").Runs().Last(), file.PieceOf("N004").Runs().Last(), "partner"), "sewn to nothing"),
        ["an end of the bag left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("Y3")), "A bag of 2 pieces"),
        ["the bag's body longer"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("Y1"))["sewLine"]!, point => new FlatPoint(1.001 * point.X, point.Y)), "of cloth, not"),
        ["the bag's seam said longer"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("Y1"))["runs"]![2]!, "lengthMm", 0.02), "mm to"),
        ["a mark of the bag missing"] = (file => file.PatternOf(file.PieceOf("Y1"))["notches"]!.AsArray().RemoveAt(0), "marks do not meet"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Faults_EitherSide_None(bool isInward)
    {
        var job = Good with { GroundFlap = Good.GroundFlap! with { IsInward = isInward } };

        Assert.Empty(Faults(SewingJobs.PiecesText(job), job));
    }

    [Fact]
    public void Faults_ManyDomesAndPlans_None() => Assert.All(
        new[]
        {
            (new CoverSizes(2, 3, 2500, 20, 0, 0), PanelForm.Facets, 100.0),
            (new CoverSizes(4, 7, 4000, 30, 80, 0.002), PanelForm.Bands, 450),
            (new CoverSizes(3, 4, 3000, 25, 60, -0.001), PanelForm.Gores, 250),
        },
        entry =>
        {
            var (sizes, form, width) = entry;
            var job = Good with { Frame = SewingJobs.Dome(sizes).Frame, StandOff = SewingJobs.Dome(sizes).StandOff, Skirt = SewingJobs.Dome(sizes).Skirt, Ease = sizes.Ease, Panels = form == PanelForm.Facets ? [] : [new PanelWish(form)], GroundFlap = Good.GroundFlap! with { Width = SewingJobs.Mm(width) } };
            Assert.Empty(Faults(SewingJobs.PiecesText(job with { Cloths = [.. job.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] }), job));
        });

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        Assert.Contains(Faults(PlantedFaults.Plant(GoodText, change), Good), fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Bag_WithoutSizes_HoldsTheFoldedCover()
    {
        var job = Dome with { Cloths = [Dome.Cloths[0] with { Thickness = SewingJobs.Mm(0.5) }], Bag = new BagWish("canvas", null, 3) };

        var file = SewnFile.Read(SewingJobs.PiecesText(job));

        // By hand: 99.9 m2 of finished cover x 0.5 mm x 3 x 1.3 = 0.1948 m3 = 2 a^3, a = 460.1 mm: 470 and 2 a = 920.2: 930.
        Assert.Empty(ExtraFaults.OfBag(file, 930, 470, 470));
        Assert.Empty(BagPieces.Faults(job, []));
        Assert.Equal("bag", Assert.Single(BagPieces.Faults(job with { Cloths = [Dome.Cloths[0]] }, [])).Place);
    }

    private static IEnumerable<string> Faults(string text, Job job) =>
    [
        .. ExtraFaults.OfGroundFlap(SewnFile.Read(text), TrueCover.Build(SewingJobs.OrderOf(job).Sizes), job.GroundFlap!.Width.Millimetres, job.GroundFlap.IsInward),
        .. ExtraFaults.OfBag(SewnFile.Read(text), 900, 400, 350),
    ];
}
