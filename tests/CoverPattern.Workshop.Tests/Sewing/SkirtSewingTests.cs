using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers with every shape of skirt, deck and measured heights sew up; planted faults below the base hubs are found.</summary>
public class SkirtSewingTests
{
    private static readonly DeckWish Plain = new(DeckDatum.Lowest);

    private static readonly Job ThreeV = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));

    [Theory]
    [InlineData(2, 3, SkirtShape.Slope, 60)]
    [InlineData(3, 4, SkirtShape.Slope, 60)]
    [InlineData(3, 5, SkirtShape.Slope, 60)]
    [InlineData(3, 5, SkirtShape.Slope, 0)]
    [InlineData(4, 7, SkirtShape.Slope, 200)]
    [InlineData(5, 8, SkirtShape.Slope, 25)]
    [InlineData(2, 3, SkirtShape.Chords, 60)]
    [InlineData(3, 5, SkirtShape.Chords, 60)]
    [InlineData(3, 5, SkirtShape.Chords, 0)]
    [InlineData(4, 7, SkirtShape.Chords, 200)]
    public void Faults_AnyShape_None(int frequency, int rows, SkirtShape shape, double drop) =>
        AssertSews(SewingJobs.Dome(new CoverSizes(frequency, rows, 3657.6, 25, drop, 0.003)) with { Skirt = new SkirtWish(SewingJobs.Mm(drop), shape) });

    [Theory]
    [InlineData(SkirtShape.Vertical)]
    [InlineData(SkirtShape.Slope)]
    public void Faults_AnyDeck_None(SkirtShape shape)
    {
        var job = ThreeV with { Skirt = ThreeV.Skirt with { Shape = shape } };
        var heights = Heights(hub => 40 + (13.7 * hub % 31));

        AssertSews(job with { Deck = Plain with { Datum = DeckDatum.Mean } });
        AssertSews(job with { Deck = Plain with { Plinth = SewingJobs.Mm(150) } });
        AssertSews(job with { Deck = Plain with { Raise = SewingJobs.Mm(38.1) } });
        AssertSews(job with { Deck = Plain with { Raise = SewingJobs.Mm(38.1), Datum = DeckDatum.Mean, Tilt = new DeckTilt(0.02, 250) } });
        AssertSews(job with { Deck = Plain with { Heights = heights } });
        AssertSews(job with { Deck = Plain with { Heights = heights, Ground = Heights(hub => -7 * (hub % 4)) } });
        AssertSews(job with { Deck = Plain with { Tilt = new DeckTilt(0.05, 30) } });
        AssertSews(job with { Deck = Plain with { Ground = Heights(hub => 11 * (hub % 3)) } });
    }

    [Fact]
    public void Faults_ChordsOverMeasuredHeights_None()
    {
        var job = ThreeV with { Skirt = ThreeV.Skirt with { Shape = SkirtShape.Chords } };

        AssertSews(job with { Deck = Plain with { Raise = SewingJobs.Mm(38.1) } });
        AssertSews(job with { Deck = Plain with { Heights = Heights(hub => 40 + (13.7 * hub % 31)) } });
    }

    [Theory]
    [InlineData(SkirtShape.Vertical)]
    [InlineData(SkirtShape.Slope)]
    [InlineData(SkirtShape.Chords)]
    public void Faults_AnyHem_None(SkirtShape shape)
    {
        var job = ThreeV with { Skirt = ThreeV.Skirt with { Shape = shape } };

        AssertSews(job with { Hem = job.Hem with { Fitting = SewingJobs.Mm(50) } });
        AssertSews(job with { Hem = job.Hem with { Fixings = new HemFixings(SewingJobs.Mm(500), SewingJobs.Mm(25)) } });
        AssertSews(job with { Hem = job.Hem with { Kind = HemKind.Sleeve, Pipe = SewingJobs.Mm(20), Gap = SewingJobs.Mm(100) } });
    }

    private static readonly Job Splashed = ThreeV with
    {
        Skirt = ThreeV.Skirt with { Splash = new SplashWish("coated", SewingJobs.Mm(250)) },
        Cloths = [ThreeV.Cloths[0], ThreeV.Cloths[0] with { Name = "coated" }],
    };

    private static readonly Dictionary<string, (Action<JsonNode> Change, string Found)> PlantedIntoBands = new(StringComparer.Ordinal)
    {
        ["a line a millimetre high"] = (file => PlantedFaults.MoveAll(SplashLine(file)["path"]!, new FlatPoint(0, 1)), "off the band's height"),
        ["a line not drawn"] = (file => file.Patterns().First(HasLine)["lines"]!.AsArray().Remove(SplashLine(file)), "upper edges of the splash band"),
        ["a strip missing"] = (file => file.Remove(file.PieceOf("C2 Q007")), "the splash band covers"),
        ["an upper edge not turned under"] = (file => file.PatternOf(file.PieceOf("C1 Q001")).Runs().First(run => (string)run["role"]! == "turned")["allowanceMm"] = 0, "to turn under"),
    };

    public static IEnumerable<object[]> BandNames() => PlantedIntoBands.Keys.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(BandNames))]
    public void Faults_PlantedIntoASplashBand_Found(string name)
    {
        var (job, (change, found)) = (Splashed with { Covers = 2 }, PlantedIntoBands[name]);

        var faults = SewingUp.Faults(PlantedFaults.Plant(SewingJobs.PiecesText(job), change), SewingJobs.OrderOf(job));

        Assert.Contains(faults, fault => fault.Contains(found, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Faults_SplashBandOfAnyPlanAndShape_None()
    {
        var wide = Splashed with { Cloths = [.. Splashed.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(20_000) })] };
        AssertSews(Splashed);
        AssertSews(Splashed with { Skirt = Splashed.Skirt with { Shape = SkirtShape.Slope }, Seam = SeamWish.Of(MakeUpForm.Welded, SewingJobs.Mm(40)) });
        AssertSews(wide with { Panels = [new PanelWish(PanelForm.Bands)] });
        AssertSews(wide with { Panels = [new PanelWish(PanelForm.Gores)] });
        AssertSews(Splashed with { Frame = Splashed.Frame with { Frequency = 2, Rows = 3 }, Skirt = Splashed.Skirt with { Drop = SewingJobs.Mm(30) } });
        Assert.Contains(
            SewingUp.Faults(SewingJobs.PiecesText(Splashed), SewingJobs.OrderOf(ThreeV)), fault => fault.Contains("nobody ordered", StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_SplashBandsAsLowAsTwoTrimmedCorners_None()
    {
        // Above a skirt of 150 mm the band reaches 50 mm up the rows: there two trims of a felled seam's 30 mm would cross.
        // Its upper corners do not lie at hubs and keep their cloth.
        var job = Splashed with
        {
            Skirt = Splashed.Skirt with { Drop = SewingJobs.Mm(150), Shape = SkirtShape.Chords, Splash = new SplashWish("coated", SewingJobs.Mm(200)) },
            Panels = [new PanelWish(PanelForm.Bands)],
            Cloths = [.. Splashed.Cloths.Select(cloth => cloth with { RollWidth = SewingJobs.Mm(20_000) })],
        };
        foreach (var form in Enum.GetValues<MakeUpForm>())
        {
            foreach (var corners in Enum.GetValues<CornerStyle>())
            {
                AssertSews(job with { Seam = SeamWish.Of(form, SewingJobs.Mm(15)) with { Corners = corners } });
            }
        }
    }

    private static bool HasLine(JsonNode pattern) => pattern["lines"]!.AsArray().Any(line => (string)line!["purpose"]! == "splash line");

    private static JsonNode SplashLine(JsonNode file) => file.Patterns().First(HasLine)["lines"]!.AsArray().First(line => (string)line!["purpose"]! == "splash line")!;

    [Fact]
    public void Faults_RandomBases_None() => Jobs.Where(job => DeckCheck.Faults(job, FrameBuilder.Build(job.Frame)).IsEmpty).Sample(
        AssertSews,
        iter: 60,
        print: job => SewingJobs.OrderOf(job) + " " + string.Join(' ', SewingJobs.OrderOf(job).Sizes.Base.Measured ?? []));

    [Theory]
    [InlineData(SkirtShape.Vertical)]
    [InlineData(SkirtShape.Slope)]
    [InlineData(SkirtShape.Chords)]
    public void Faults_OneFootAMillimetreOff_Found(SkirtShape shape)
    {
        var job = ThreeV with { Skirt = ThreeV.Skirt with { Shape = shape }, Deck = Plain with { Raise = SewingJobs.Mm(38.1) } };
        var order = SewingJobs.OrderOf(job);
        var good = SewingJobs.PiecesText(job);

        // The lower edge's end is moved along the side of the skirt, on sew line, facet and run length: the pattern agrees with itself.
        var text = PlantedFaults.Plant(good, file => MoveFoot(file.FirstWithSkirt(), 1));

        Assert.Empty(SewingUp.Faults(good, order));
        var faults = SewingUp.Faults(text, order);
        Assert.Contains(faults, fault => fault.Contains("off the cover", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("mm are to be sewn to", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(SkirtShape.Vertical)]
    [InlineData(SkirtShape.Slope)]
    public void Faults_TwoMeasuredHeightsExchanged_Found(SkirtShape shape)
    {
        var job = ThreeV with { Skirt = ThreeV.Skirt with { Shape = shape } };
        var heights = Heights(hub => 40 + (2 * hub));
        var ordered = job with { Deck = Plain with { Heights = heights } };
        var exchanged = job with
        {
            Deck = Plain with { Heights = heights.SetItem(4, heights[4] with { Height = heights[5].Height }).SetItem(5, heights[5] with { Height = heights[4].Height }) },
        };

        Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(ordered), SewingJobs.OrderOf(ordered)));
        Assert.NotEmpty(SewingUp.Faults(SewingJobs.PiecesText(exchanged), SewingJobs.OrderOf(ordered)));
    }

    [Fact]
    public void Faults_OtherBaseOrdered_Found()
    {
        var order = SewingJobs.OrderOf(ThreeV);
        var good = SewingJobs.PiecesText(ThreeV);

        Assert.NotEmpty(SewingUp.Faults(good, order with { Sizes = order.Sizes with { Base = new BaseOrder("slope") } }));
        Assert.NotEmpty(SewingUp.Faults(good, order with { Sizes = order.Sizes with { Base = new BaseOrder("chords") } }));
        Assert.NotEmpty(SewingUp.Faults(good, order with { Sizes = order.Sizes with { Base = new BaseOrder { Raise = 58 } } }));
        Assert.NotEmpty(SewingUp.Faults(good, order with { Sizes = order.Sizes with { Base = new BaseOrder { Fall = 0.001 } } }));
    }

    private static Gen<Job> Jobs =>
        from frequency in Gen.Int[1, 5]
        from rows in Gen.Int[frequency, Math.Min(2 * frequency, (3 * frequency) - 1)]
        from radius in Gen.Double[2000, 8000]
        from standOff in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60])
        from drop in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 200])
        from ease in Gen.Double[-0.01, 0.01]
        from shape in Gen.Enum<SkirtShape>()
        from measured in Gen.Bool
        from ground in Gen.Bool
        from seed in Gen.Int[0, 100_000]
        let job = SewingJobs.Dome(new CoverSizes(frequency, rows, radius, standOff, drop, ease))
        select job with
        {
            Skirt = new SkirtWish(SewingJobs.Mm(drop), shape),
            Deck = Plain with
            {
                Heights = measured ? Around(job, seed, (hub, step) => hub + 30 + step) : [],
                Ground = ground && shape != SkirtShape.Chords ? Around(job, seed + 1, (_, step) => step) : [],
            },
        };

    private static ImmutableArray<HubHeight> Around(Job job, int seed, Func<double, double, double> height)
    {
        var (frame, random) = (FrameBuilder.Build(job.Frame), new Random(seed));
        return [.. frame.Base.Select(hub => new HubHeight(frame.Hubs[hub].Label, SewingJobs.Mm(height(frame.Hubs[hub].Position.Z, (random.NextDouble() * 50) - 25))))];
    }

    private static ImmutableArray<HubHeight> Heights(Func<int, double> height)
    {
        var frame = FrameBuilder.Build(ThreeV.Frame);
        return [.. frame.Base.Select((hub, i) => new HubHeight(frame.Hubs[hub].Label, SewingJobs.Mm(height(i))))];
    }

    /// <summary>Moves the first corner of the hem away from the piece along the side that ends there.</summary>
    private static void MoveFoot(JsonNode pattern, double step)
    {
        var (line, runs) = (pattern["sewLine"]!.AsArray(), pattern.Runs().ToArray());
        var hem = Array.FindIndex(runs, run => (string)run["role"]! == "hem");
        int[] at = [(int)runs[hem]["from"]!, (int)runs[(hem + runs.Length - 1) % runs.Length]["from"]!];
        FlatPoint PointAt(int corner) => new((double)line[corner]![0]!, (double)line[corner]![1]!);
        var (foot, above, next) = (PointAt(at[0]), PointAt(at[1]), PointAt((int)runs[hem]["to"]!));
        var moved = foot + ((step / foot.DistanceTo(above)) * (foot - above));
        foreach (var ring in pattern["facets"]!.AsArray().Append(line).ToArray())
        {
            foreach (var corner in ring!.AsArray().Where(corner => new FlatPoint((double)corner![0]!, (double)corner[1]!).DistanceTo(foot) < Tolerances.SamePlace))
            {
                (corner![0], corner[1]) = (moved.X, moved.Y);
            }
        }

        runs[hem]["lengthMm"] = moved.DistanceTo(next);
        runs[(hem + runs.Length - 1) % runs.Length]["lengthMm"] = moved.DistanceTo(above);
    }

    private static void AssertSews(Job job) => Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
}
