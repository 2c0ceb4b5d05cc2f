using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The pieces of the samples, from their job files; what was ordered is read off the file by eye.</summary>
public class SampleTests
{
    // Height of a 4V 7/12 of radius 1: own calculation of the check tables, part 2.
    private const double HeightOfFourV = 1.276393;

    private static readonly Dictionary<string, SewingOrder> Ordered = new(StringComparer.Ordinal)
    {
        // 4 m across the lowest hubs, which lie on the equator; hub 22 + padding 3; default hem 38 + 12.
        // Felled seams stop short of hubs unless the job says otherwise, under a patch outside.
        ["garden-2v"] = new(new CoverSizes(2, 3, 2000, 25, 80, 0.004), "felled", 12, 50, 2, HasFace: false, GrainRule.EitherWay) { StopsAtHubs = true, HemDepth = 38, PatchesAtHub = 1 },

        // 6 m across the sphere; hub 22; ease 0.3 %; default drop and hem; seven windows of 480 with 35, 20 and 12 mm.
        ["glasshouse-2v"] = new(new CoverSizes(2, 3, 3000, 22, 60, 0.003), "felled", 15, 50, 2, HasFace: true, GrainRule.EitherWay)
        {
            StopsAtHubs = true,
            HemDepth = 38,
            PatchesAtHub = 1,
            Windows = [.. new[] { "F1.02", "F1.06", "F1.10", "F1.14", "F2.01", "F2.07", "F2.13" }
                .Select(facet => new WindowOrder(facet, 240, 275, 260, 12, HasScreen: true, 0, facet[1] == '2' ? -30 : 0))],
        },

        // R 2.4 m; hub 22 + padding 3; drop 120; high hubs measured at 45; lapped 25, between rows felled 12; bands of five parts in rows 1 to 3.
        ["hillside-3v"] = new(new CoverSizes(3, 5, 2400, 25, 120, 0.003) { Base = new BaseOrder("vertical") { Raise = 45 } }, "lapped", 25, 50, 1, HasFace: true, GrainRule.EitherWay)
        {
            Name = "lapped two rows",
            Others = [new OrderedMakeUp("rows", "felled 12", "felled", 12)],
            HemDepth = 38,
            Plan = SewnPlan.Single with { Bands = new Dictionary<int, int> { [1] = 5, [2] = 5, [3] = 5 } },
        },

        // Welded defaults: seam 40, hem 60 without turn-under. The height is hub centre to hub centre.
        ["market-4v"] = new(new CoverSizes(4, 7, 3200 / HeightOfFourV, 25, 60, 0.003), "welded", 40, 60, 1, HasFace: true, GrainRule.OneWay),

        // 24 ft across the sphere; hub 1 in; drop 2 1/2 in; seam 5/8 in; hem 1 1/2 and 1/2 in.
        ["meadow-24ft"] = new(new CoverSizes(3, 5, 3657.6, 25.4, 63.5, 0.003), "plain", 15.875, 50.8, 1, HasFace: true, GrainRule.EitherWay),

        // 12 ft across the sphere; hub 5/8 + padding 1/8 in; drop 4 in; lapped 1 in; default hem; 1 1/2 in beside the closing seam.
        ["playhouse-12ft"] = new(new CoverSizes(2, 3, 1828.8, 19.05, 101.6, 0.003), "lapped", 25.4, 50, 1, HasFace: true, GrainRule.EitherWay)
        {
            HemDepth = 38,
            ClosingMm = 38.1,
            SplashMm = 254,
        },

        // 5 m across the sphere; hub 25; defaults: ease 0.3 %, drop 60, plain 15, hem 38 + 12.
        ["orchard-5m"] = new(new CoverSizes(3, 5, 2500, 25, 60, 0.003), "plain", 15, 50, 1, HasFace: true, GrainRule.EitherWay),
    };

    public static IEnumerable<object[]> Names()
    {
        // The lodge has an inner shell and a roof, which are no part of one order: LodgeTests holds it.
        foreach (var name in Directory.EnumerateFiles(SampleFolder.Path, "*.json").Select(Path.GetFileNameWithoutExtension).Where(name => name != LodgeTests.Name))
        {
            yield return [name!];
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Sample_None(string name)
    {
        var job = JobReader.Read(File.ReadAllBytes(Path.Combine(SampleFolder.Path, name + ".json"))).Job!;

        Assert.Empty(SewingUp.Faults(Encoding.UTF8.GetString(PiecesFile.Write(PieceStages.Run(job).Pieces!.Set)), Ordered[name] with { TieDistance = 80 }));
    }
}
