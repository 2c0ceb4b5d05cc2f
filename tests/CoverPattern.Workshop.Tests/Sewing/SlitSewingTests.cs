using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Slits and drip flaps as they are drawn on the pieces: whole, straight over folds, and as long as their zips and strips.</summary>
public class SlitSewingTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)) with
    {
        Panels = [new PanelWish(PanelForm.Bands)],
        Cloths = [SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003)).Cloths[0] with { RollWidth = SewingJobs.Mm(6000) }],
    };

    [Fact]
    public void Lines_RandomSlits_AreOneStraightLineOfTheOrderedLength()
    {
        var (laid, overFolds) = (0, 0);
        Gen.Select(Gen.Int[2, 4], Gen.Int[1, 20], Gen.Double[-300, 300], Gen.Double[-200, 200], Gen.Double[-90, 90], Gen.Double[150, 1200]).Sample(
            (row, number, right, up, turned, length) =>
            {
                var job = WithSlit(FormattableString.Invariant($"F{row}.{number:00}"), right, up, turned, length);
                if (FaultsOf(job).Length > 0)
                {
                    return;
                }

                laid++;
                var file = SewnFile.Read(SewingJobs.PiecesText(job));
                var lines = file.Pieces.SelectMany(piece => file.Patterns.First(pattern => pattern.Id == piece.Pattern).Lines.Where(line => line.Purpose == "slit").Select(line => (piece.Label, line.Path))).ToArray();

                // One piece has it, and end to end it is as long as ordered: so it is straight over its folds.
                Assert.Single(lines.Select(line => line.Label).Distinct());
                overFolds += lines.Length > 1 ? 1 : 0;
                FlatPoint[] ends = [.. lines.SelectMany(line => new[] { line.Path[0], line.Path[^1] })];
                Assert.Equal(length, ends.Max(end => ends.Max(other => end.DistanceTo(other))), 0.01);
                Assert.Equal(length, lines.Sum(line => line.Path[0].DistanceTo(line.Path[^1])), 0.01);
                Assert.Equal(length, FittingsOf(job).Single(fitting => fitting.What == "zip").LengthMm, 0.01);
            },
            iter: 300,
            threads: 1);

        Assert.InRange(laid, 30, 300);
        Assert.InRange(overFolds, 1, laid);
    }

    [Fact]
    public void Lay_SlitThroughSeam_IsAFault()
    {
        var single = WithSlit("F2.05", 0, 0, 90, 1600) with { Panels = [] };

        Assert.Contains(FaultsOf(single), fault => fault.Said.Contains("slit through a seam", StringComparison.Ordinal));
    }

    [Fact]
    public void Lay_SlitTooNearToHubOrTooLong_IsAFault()
    {
        var faults = FaultsOf(WithSlit("F2.05", 0, 0, 0, 1000) with { Notions = NotionWish.Usual with { ZipLongest = SewingJobs.Mm(900) } });

        Assert.Contains(faults, fault => fault.Said.Contains("1000 mm for one zip", StringComparison.Ordinal));
        Assert.Contains(FaultsOf(WithSlit("F2.05", 0, 0, 0, 1640)), fault => fault.Said.Contains("to the hub", StringComparison.Ordinal));
    }

    [Fact]
    public void Lines_DripFlap_IsLevelAndReachesBeyondBothSides()
    {
        var job = Dome with
        {
            Cloths = [.. Dome.Cloths, Dome.Cloths[0] with { Name = "clear" }],
            Openings = [new OpeningWish(new OutlineWish(OutlineForm.Rectangle) { Width = SewingJobs.Mm(400), Height = SewingJobs.Mm(300) }, new OpeningPlace("F2.05", SewingJobs.Mm(0), SewingJobs.Mm(-60)), LayingRule.Carried, SewingJobs.Mm(15)) { Sheet = "clear", Lap = SewingJobs.Mm(20), Drip = SewingJobs.Mm(80) }],
        };

        Assert.Empty(FaultsOf(job));
        var file = SewnFile.Read(SewingJobs.PiecesText(job));
        var drawn = file.Patterns.SelectMany(pattern => pattern.Lines).Where(line => line.Purpose == "drip flap").ToArray();

        // 400 mm wide and 100 mm beyond on both sides; the strip is as long.
        Assert.Equal(600, drawn.Sum(line => line.Path[0].DistanceTo(line.Path[^1])), 0.01);
        var strip = file.Patterns.Single(pattern => pattern.Id == file.Pieces.Single(piece => piece.Label == "O1d").Pattern);
        Assert.Equal((600.0, 80.0), (Math.Round(strip.Runs[0].LengthMm, 2), Math.Round(strip.Runs[1].LengthMm, 2)));
    }

    [Fact]
    public void Lay_SlitInsideAnOpening_IsAFault()
    {
        var job = WithSlit("F2.05", 0, 0, 0, 200);
        job = job with { Openings = [job.Openings[0], new OpeningWish(new OutlineWish(OutlineForm.Circle) { Width = SewingJobs.Mm(700) }, new OpeningPlace("F2.05", SewingJobs.Mm(0), SewingJobs.Mm(0)), LayingRule.Carried, SewingJobs.Mm(15))] };

        Assert.Contains(FaultsOf(job), fault => fault.Said.Contains("it lies in what O2 takes out", StringComparison.Ordinal));
    }

    private static Job WithSlit(string facet, double right, double up, double turned, double length) => Dome with
    {
        Openings =
        [
            new OpeningWish(new OutlineWish(OutlineForm.Line) { Height = SewingJobs.Mm(length) }, new OpeningPlace(facet, SewingJobs.Mm(right), SewingJobs.Mm(up)) { Turned = turned }, LayingRule.Either, SewingJobs.Mm(15))
            {
                Kind = OpeningKind.Slit, Held = JoinKind.Zip, Strip = SewingJobs.Mm(80),
            },
        ],
    };

    private static Fault[] FaultsOf(Job job)
    {
        var (_, shell, laid, plan) = Laid(job);
        return [.. laid.Faults, .. OpeningSeamCheck.Faults(job, shell, plan, laid.Openings), .. OpeningSeamCheck.Faults(plan, laid.Slits)];
    }

    private static Fitting[] FittingsOf(Job job)
    {
        var (_, shell, laid, plan) = Laid(job);
        return [.. OpeningFittings.Of(job, laid, OpeningPieces.Make(job, laid, Subdivider.Cut(shell, plan, laid.Regions)))];
    }

    private static (Frame Frame, Shell Shell, OpeningLaying Laid, SeamPlan Plan) Laid(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        return (frame, shell, OpeningLayer.Lay(job, frame, shell), SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)));
    }
}
