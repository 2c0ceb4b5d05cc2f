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

/// <summary>Stove pipes sewn up: patch, sleeve and flaps fit the true cover and each other, and every fault planted is found.</summary>
public class PipeSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly PipeOrder Upright = new("F4.02", 30, -20, IsLevel: false, 75, 150);
    private static readonly Job Good = Piped(Dome, Upright);
    private static readonly string GoodText = SewingJobs.PiecesText(Good);

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a patch left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("J1p")), "which is not joined to it"),
        ["a sleeve left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("J1s")), "0 pieces of kind pipeSleeve"),
        ["a closing flap left out"] = (file => file["pieces"]!.AsArray().Remove(file.PieceOf("J1c")), "1 pieces of kind pipeFlap"),
        ["the sleeve's partner missing"] = (file => file.PieceOf("J1s").Runs().First().AsObject().Remove("partner"), "has no partner"),
        ["the sleeve a thousandth larger"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1s"))["sewLine"]!, point => 1.001 * point), "bend at other places"),
        ["the sleeve turned over"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1s"))["sewLine"]!, point => new FlatPoint(point.X, -point.Y)), "high over the top"),
        ["the sleeve of another slope"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1s"))["sewLine"]!, point => new FlatPoint(point.X, 1.01 * point.Y)), "mm off the cover"),
        ["the sleeve lower"] = (file => file.PatternOf(file.PieceOf("J1s"))["sewLine"]!.AsArray().TakeLast(2).ToList().ForEach(point => PlantedFaults.MoveAll(point!, new FlatPoint(0, -0.1))), "high over the top"),
        ["a mark of the sleeve missing"] = (file => file.PatternOf(file.PieceOf("J1s"))["notches"]!.AsArray().RemoveAt(0), "marks do not meet"),
        ["less lap"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("J1p"))["runs"]![0]!, "allowanceMm", -1), "of allowance"),
        ["the hole 0.1 mm aside"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1p"))["cutouts"]![0]!["rim"]![3]!, new FlatPoint(0.1, 0)), "bend at other places"),
        ["the hole's partner changed"] = (file => file.PieceOf("J1p").Runs().Last()["partner"]!["piece"] = "J1c", "which is not joined to it"),
        ["a closing flap too small"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("J1c"))["sewLine"]!, point => 0.99 * point), "closing flap covers"),
        ["a rim moved on the cover"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("P4.02"))["cutouts"]![0]!["rim"]!, new FlatPoint(0.3, 0)), "off the outline"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_UprightPipeInOneFacet_None() => Assert.Empty(PipedCover.Faults(GoodText, SewingJobs.OrderOf(Good), Upright));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        var faults = PipedCover.Faults(PlantedFaults.Plant(GoodText, change), SewingJobs.OrderOf(Good), Upright);

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.Ordinal));
    }

    /// <summary>Over seams, folds and beside hubs, though struts stand there: the pieces must fit whatever is told of the place.</summary>
    [Fact]
    public void Faults_OverFoldsAndSeamsAndAsCone_None()
    {
        var wide = Dome with { Cloths = [.. Dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] };
        (Job Job, PipeOrder Order)[] cases =
        [
            (Dome, new PipeOrder("F3.06", 0, 0, IsLevel: true, 65, 200)),
            (Dome, new PipeOrder("F4.02", 20, 260, IsLevel: false, 75, 150)),
            (Dome, new PipeOrder("F5.03", 0, -330, IsLevel: false, 60, 180)),
            (wide with { Panels = [new PanelWish(PanelForm.Bands)] }, new PipeOrder("F4.03", 330, 0, IsLevel: false, 75, 150)),
            (wide with { Panels = [new PanelWish(PanelForm.Gores)] }, new PipeOrder("F2.05", 200, 30, IsLevel: true, 100, 120) { RainFlap = 60 }),
            (Dome, new PipeOrder("F4.02", 0, 0, IsLevel: false, 65, 200) { Spread = 15, Sleeve = 120 }),
            (Dome, new PipeOrder("F2.06", 0, -20, IsLevel: true, 65, 150) { Spread = 20, Sleeve = 80, ClosingFlap = 20 }),
        ];

        Assert.All(cases, entry =>
        {
            var job = Piped(entry.Job, entry.Order);
            Assert.Empty(LaidFaults(job));
            Assert.Empty(PipedCover.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job), entry.Order));
        });
    }

    [Fact]
    public void Faults_PipeByItsPlaceOnThePlan_SamePiecesAsByFacet()
    {
        var cover = TrueCover.Build(SewingJobs.OrderOf(Dome).Sizes);
        var middle = TrueOpening.MiddleOf(cover, Upright.Cylinder(cover, 1));
        var place = new PipePlace(PipeRun.Vertical, string.Empty, default, default) { Plan = (SewingJobs.Mm(middle.X / 1.003), SewingJobs.Mm(middle.Y / 1.003)) };

        var text = SewingJobs.PiecesText(Good with { Pipes = [Good.Pipes[0] with { Place = place }] });

        Assert.Empty(PipedCover.Faults(text, SewingJobs.OrderOf(Good), Upright));
    }

    [Fact]
    public void Faults_RandomPipes_NoneWhereTheyCanBeLaid()
    {
        var (laid, asked, over) = (0, 0, 0);
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 15], Gen.Double[-400, 400], Gen.Double[-350, 350], Gen.Bool, Gen.Double[35, 120], Gen.Double[60, 300], Gen.Double[0, 1]).Sample(
            (row, number, right, up, isLevel, radius, clear, plan) =>
            {
                var order = new PipeOrder(FormattableString.Invariant($"F{row}.{number:00}"), right, up, isLevel, radius, clear) { TurnUnder = 12, RainFlap = 40, ClosingFlap = 30 };
                var job = Piped(Dome with { Panels = plan > 0.6 ? [new PanelWish(PanelForm.Bands)] : [], Cloths = [.. Dome.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(6000) })] }, order);
                asked++;
                if (LaidFaults(job).Length == 0)
                {
                    laid++;
                    var text = SewingJobs.PiecesText(job);
                    over += text.Contains("\"J1-2\"", StringComparison.Ordinal) ? 1 : 0;
                    var faults = PipedCover.Faults(text, SewingJobs.OrderOf(job), order);
                    Assert.True(faults.Count == 0, string.Join('\n', faults));
                }
            },
            iter: 40,
            threads: 1);

        // Most run along a facet, round a hub, or off the cover; enough do not, and some of these go over seams.
        Assert.InRange(laid, 5, asked);
        Assert.InRange(over, 2, laid);
    }

    /// <summary>What keeps pieces from being made; struts and hubs within the clear distance, the lower edge and seams beside are told by others.</summary>
    private static Fault[] LaidFaults(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var laid = OpeningLayer.Lay(job, frame, shell);
        var faults = laid.Faults.Concat(PipeSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), laid.Pipes));
        return [.. faults.Where(fault => !fault.Said.Contains("inside its clear distance", StringComparison.Ordinal))];
    }

    private static Job Piped(Job job, PipeOrder order) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "heat", ServiceTemperature = 550 }],
        Pipes =
        [
            new PipeWish(new PipePlace(order.IsLevel ? PipeRun.Level : PipeRun.Vertical, order.Facet, SewingJobs.Mm(order.Right), SewingJobs.Mm(order.Up)), SewingJobs.Mm(2 * order.Radius), SewingJobs.Mm(order.Clear), "heat")
            {
                Spread = order.Spread,
                Gap = SewingJobs.Mm(order.Gap),
                Sleeve = SewingJobs.Mm(order.Sleeve),
                TurnUnder = SewingJobs.Mm(order.TurnUnder),
                Lap = SewingJobs.Mm(order.Lap),
                RainFlap = SewingJobs.Mm(order.RainFlap),
                ClosingFlap = SewingJobs.Mm(order.ClosingFlap),
            },
        ],
    };
}
