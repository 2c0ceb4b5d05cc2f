using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CsCheck;
using Xunit.Abstractions;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Covers over frames of every kind sew up: all solids and divisions, drawn out, on walls, gore roofs.</summary>
public class FrameSewingTests(ITestOutputHelper output)
{
    private static readonly Gen<Point3?> Stretches = Gen.OneOf(
        Gen.Const((Point3?)null),
        from front in Gen.Double[0.7, 1.4] from side in Gen.Double[0.7, 1.4] from height in Gen.Double[0.6, 1.3] select (Point3?)new Point3(front, side, height));

    private static readonly Gen<double> Walls = Gen.OneOf(Gen.Const(0.0), Gen.Double[200, 1500]);

    /// <summary>Every way to divide a solid, and every thing at its top, with the cuts that end on one ring of hubs.</summary>
    private static readonly FrameWish[] Solids =
    [
        .. from family in Enum.GetValues<FrameFamily>()
           from division in Enum.GetValues<FrameDivision>()
           from up in Enum.GetValues<FrameUp>()
           from frequency in Enumerable.Range(1, 6)
           where StrutFamily.IsDivisible(family, division, frequency)
           let wish = new FrameWish(family, frequency, 0, "", FrameMeasure.Radius, SewingJobs.Mm(1000)) { Division = division, Up = up }
           let ball = Ball.Divide(wish)
           from rows in Enumerable.Range(1, ball.MostRows)
           where ball.Above(wish with { Rows = rows }, out _) is not null
           select wish with { Rows = rows },
    ];

    private static readonly Gen<FrameWish> Domes =
        from solid in Gen.Int[0, Solids.Length - 1]
        from radius in Gen.Double[1200, 6000]
        from stretch in Stretches
        from wall in Walls
        select Solids[solid] with { Size = SewingJobs.Mm(radius), Stretch = stretch, RiserMm = wall };

    private static readonly Gen<FrameWish> Roofs =
        from sides in Gen.Int[3, 20]
        from meridian in Gen.Enum<GoreMeridian>().Where(line => line != GoreMeridian.Points)
        from chords in Gen.Int[1, 7]
        from radius in Gen.Double[1200, 5000]
        from share in Gen.Double[0.3, 1.0]
        from crown in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.1, 0.3])
        from wall in Walls
        select new FrameWish(default, 0, 0, "", default, SewingJobs.Mm(1000))
        {
            RiserMm = wall,
            Gores = new GoreWish(sides, meridian, chords, SewingJobs.Mm(radius), SewingJobs.Mm(share * radius)) { Crown = crown == 0 ? null : SewingJobs.Mm(crown * radius) },
        };

    private static readonly Gen<(Job Job, TrueMesh Frame)> AnyJobs =
        from wish in Gen.OneOf(Domes, Domes, Domes, Roofs)
        from standOff in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 60])
        from drop in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 200])
        from form in Gen.Int[0, 4]
        let frame = TrueDomes.Of(wish)
        select (SewingJobs.Dome(new CoverSizes(1, 1, 1000, standOff, drop, 0.003)) with
        {
            Frame = wish,
            Seam = SeamWish.Of(MakeUpForm.Plain, SewingJobs.Mm(4)),
            Hem = new HemWish(SewingJobs.Mm(8), SewingJobs.Mm(2)),
            Panels = Panels(form, frame),
            Cloths = [SewingJobs.Dome(new CoverSizes(1, 1, 1000, 0, 0, 0)).Cloths[0] with { RollWidth = SewingJobs.Mm(100_000) }],
        }, frame);

    /// <summary>What is refused is refused with a reason that names the place; and most is not.</summary>
    [Fact]
    public void Finish_HundredRandomFrames_AtMostOneInFiveIsRefused()
    {
        var refused = new List<string>();

        AnyJobs.Sample(
            one =>
            {
                var faults = SewingJobs.FaultsOf(one.Job);
                Assert.All(faults, fault => Assert.True(fault.Place.Length > 0 && fault.Said.Length > 0 && fault.Allowed.Length > 0));
                lock (refused)
                {
                    refused.AddRange(faults.Take(1).Select(fault => $"{fault.Place}: {fault.Said}"));
                }
            },
            iter: 100,
            print: Told);

        output.WriteLine(Refusals.Told(100, refused));
        Assert.True(refused.Count <= 20, string.Join("\n", refused));
    }

    [Fact]
    public void Faults_TwentyFiveRandomFrames_None() => AnyJobs.Where(one => SewingJobs.FaultsOf(one.Job).IsEmpty).Sample(Sews, iter: 25, print: Told);

    [Fact]
    [Trait("Category", "Long")]
    public void Faults_TwoHundredRandomFrames_None() => AnyJobs.Where(one => SewingJobs.FaultsOf(one.Job).IsEmpty).Sample(Sews, iter: 200, print: Told);

    private static void Sews((Job Job, TrueMesh Frame) one)
    {
        var faults = SewingUp.Faults(SewingJobs.PiecesText(one.Job), SewingJobs.OrderOf(one.Job, one.Frame));
        Assert.True(faults.Count == 0, string.Join("\n", faults.Take(5)));
    }

    private static ImmutableArray<PanelWish> Panels(int form, TrueMesh frame) => form switch
    {
        1 => [new PanelWish(PanelForm.Bands)],
        2 => [new PanelWish(PanelForm.Gores)],
        3 => [new PanelWish(PanelForm.Bands) { Rows = new RowRange(1, 1), Parts = Math.Min(4, frame.Facets.Count(facet => facet.Row == 1)) }, .. frame.Rows > 1 ? new[] { new PanelWish(PanelForm.Facets) } : []],
        _ => [],
    };

    private static string Told((Job Job, TrueMesh Frame) one) => one.Job.Frame + " " + one.Job.Frame.Gores + " " + string.Join(' ', one.Job.Panels)
        + FormattableString.Invariant($" stand-off {one.Job.StandOff.TubeRadius.Millimetres} drop {one.Job.Skirt.Drop.Millimetres}");
}
