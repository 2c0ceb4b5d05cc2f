using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Insulation pads held to the true frame, and faults planted in them found.</summary>
public class PadSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)) with { Insulation = new InsulationWish("canvas", SewingJobs.Mm(5)) };
    private static readonly string GoodText = SewingJobs.PiecesText(Dome);

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> Planted = new(StringComparer.Ordinal)
    {
        ["a pad left out"] = (file => file.Remove(file.PieceOf("A2.05")), "has no pad"),
        ["a pad of another facet"] = (file => file.PieceOf("A2.05")["pattern"] = (string)file.PieceOf("A5.01")["pattern"]!, "mm round, not"),
        ["a pad larger"] = (file => PlantedFaults.MoveAll(file.PatternOf(file.PieceOf("A2.05"))["sewLine"]!, point => 1.0001 * point), "mm round, not"),
        ["a pad with allowance"] = (file => PlantedFaults.Add(file.PatternOf(file.PieceOf("A2.05")).Runs().First(), "allowanceMm", 1), "not cut as it is"),
        ["a pad too many"] = (file => file.PieceOf("A2.05")["label"] = "A9.99", "belongs nowhere"),
    };

    public static IEnumerable<object[]> Names() => Planted.Keys.Select(name => new object[] { name });

    [Fact]
    public void Faults_PadsInAllFacets_None() => Assert.Empty(Faults(GoodText, Dome, []));

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Planted_Found(string name)
    {
        var (change, found) = Planted[name];

        Assert.Contains(Faults(PlantedFaults.Plant(GoodText, change), Dome, []), fault => fault.Contains(found, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_BesideWindowsAndAPipe_NoneOnTheirFacets()
    {
        var job = SewingJobs.Windowed(Dome, SewingJobs.Window(300, "F2.07"));
        job = job with
        {
            Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "heat", ServiceTemperature = 550 }],
            // Near the strut to F5.02: that facet's border is within the clear distance too.
            Pipes = [new PipeWish(new PipePlace(PipeRun.Vertical, "F4.02", SewingJobs.Mm(0), SewingJobs.Mm(0)), SewingJobs.Mm(150), SewingJobs.Mm(150), "heat") { Gap = SewingJobs.Mm(3), Sleeve = SewingJobs.Mm(150), TurnUnder = SewingJobs.Mm(15), Lap = SewingJobs.Mm(40), RainFlap = SewingJobs.Mm(60), ClosingFlap = SewingJobs.Mm(40) }],
        };

        Assert.Empty(Faults(SewingJobs.PiecesText(job), job, ["F2.07", "F4.02"]));
    }

    [Fact]
    public void Faults_TuckToTheAxis_IsRefused()
    {
        var job = Dome with { Insulation = new InsulationWish("canvas", SewingJobs.Mm(24.5)) };

        Assert.Equal("insulation.tuck", Assert.Single(InsulationPads.Faults(job, FrameBuilder.Build(job.Frame))).Place);
        Assert.Empty(InsulationPads.Faults(Dome, FrameBuilder.Build(Dome.Frame)));
    }

    private static IEnumerable<string> Faults(string text, Job job, string[] without)
    {
        var sizes = SewingJobs.OrderOf(job).Sizes;
        // Tube radius 25 less a tuck of 5; hubs of 50 mm, the job's default.
        return PadFaults.Find(SewnFile.Read(text), sizes.Mesh, (20, 50), without);
    }
}
