using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Windows, doors and vents sewn up with all that closes them; every fault planted is found.</summary>
public class ClosedOpeningTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));
    private static readonly OpeningOrder InWall = new("F1.04", 0, -280, 0, IsCarried: true) { Size = (500, 900), HasLayers = true };
    private static readonly OpeningOrder OverSeams = new("F2.05", 250, 40, 20, IsCarried: true) { Size = (760, 520), Corner = 160, HasLayers = true };
    private static readonly OpeningOrder InFacet = new("F2.05", 30, 20, 10, IsCarried: true) { Size = (460, 400), Corner = 160, HasLayers = true };

    private static readonly (string Letter, string Kind)[] Window = [("p", "pane"), ("s", "screen")];
    private static readonly (string Letter, string Kind)[] Door = [("f", "flap"), ("s", "screen")];

    private static readonly Dictionary<string, (OpeningOrder Order, Func<OpeningWish, OpeningWish> Wish, (string Letter, string Kind)[] Parts, string[] Joins)> Cases = new(StringComparer.Ordinal)
    {
        ["window by zip over seams"] = (OverSeams, wish => wish with { Held = JoinKind.Zip, Sheet = "clear", Screen = "mesh" }, Window, ["zip"]),
        ["window by zip in a facet"] = (InFacet, wish => wish with { Held = JoinKind.Zip, Sheet = "clear", Screen = "mesh" }, Window, ["zip"]),
        ["window by hook and loop"] = (OverSeams, wish => wish with { Held = JoinKind.HookLoop, Lap = SewingJobs.Mm(40), Screen = "mesh" }, [("s", "screen")], ["hookLoop"]),
        ["window in a ring"] = (InFacet, wish => wish with { Held = JoinKind.Ring, Ring = SewingJobs.Mm(35), Lap = SewingJobs.Mm(20), Sheet = "clear", Screen = "mesh" }, Window, ["ring"]),
        ["window with seams of its own"] = (OverSeams, wish => wish with { Lap = SewingJobs.Mm(20), Sheet = "clear", IsSeamed = true }, [("p", "pane")], ["sewn"]),
        ["door all round"] = (InWall, wish => Flap(wish, OpensAt.Around), Door, ["zip"]),
        ["door at the right"] = (InWall, wish => Flap(wish, OpensAt.Right), Door, ["zip", "sewn"]),
        ["door at the left"] = (InWall, wish => Flap(wish, OpensAt.Left), Door, ["sewn", "sewn", "zip"]),
        ["door at both sides"] = (InWall, wish => Flap(wish, OpensAt.Both), Door, ["zip", "sewn", "zip"]),
        ["door in the middle"] = (InWall, wish => Flap(wish, OpensAt.Middle), Door, ["sewn"]),
        ["arched door in the middle"] = (InWall with { Size = (500, 1000), Corner = 250 }, wish => Flap(wish, OpensAt.Middle), Door, ["sewn"]),
        ["base vent by hook and loop"] = (InWall with { Size = (560, 700) }, wish => Flap(wish, OpensAt.Both) with { Kind = OpeningKind.BaseVent, Held = JoinKind.HookLoop, Lap = SewingJobs.Mm(40) }, Door, ["hookLoop", "sewn", "hookLoop"]),
    };

    public static IEnumerable<object[]> Names() => Cases.Keys.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(Names))]
    public void Faults_Case_None(string name)
    {
        var (order, wish, _, _) = Cases[name];
        var job = Opened(Dome, order, wish);
        var text = SewingJobs.PiecesText(job);

        Assert.Empty(FaultsOf(job));
        Assert.Empty(SewingJobs.FaultsOf(job));
        Assert.Empty(OpenedCover.Faults(text, SewingJobs.OrderOf(job), order));
        Assert.Empty(FilledOpening.Faults(text, FillOf(name, job)));
    }

    private static OpeningWish Flap(OpeningWish wish, OpensAt opens) => wish with
    {
        Kind = OpeningKind.Door, Held = JoinKind.Zip, Opens = opens, Flap = "canvas", Screen = "mesh", Lap = SewingJobs.Mm(20), Strip = SewingJobs.Mm(80), Drip = SewingJobs.Mm(80), Webbing = SewingJobs.Mm(38),
    };

    private static FillOrder FillOf(string name, Job job)
    {
        var (order, _, parts, joins) = Cases[name];
        var cells = TrueOpening.CellsOf(TrueCover.Build(SewingJobs.OrderOf(job).Sizes), order).Values.SelectMany(list => list).ToArray();
        var area = cells.Select(cell => cell.Whole).Distinct().Sum(face => face.Area) - cells.Sum(cell => cell.Area);
        return new FillOrder(parts, joins, area)
        {
            // Chords of the drawn curve leave a little out, two thirds of their rise along the rim; a corner moves with the grid.
            AreaError = (order.Size.Width + order.Size.Height) * 2 * ((order.Corner > 0 ? 0.02 : 0) + 0.0007),
            Lap = job.Openings[0].Lap.Millimetres,
            HasLeaves = job.Openings[0].Opens == OpensAt.Middle,
            Zips = [.. FittingsOf(job).Where(fitting => fitting.What == "zip").Select(zip => (zip.Label[2..3], zip.LengthMm))],
        };
    }

    private static ImmutableArray<Fitting> FittingsOf(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var laid = OpeningLayer.Lay(job, frame, shell);
        return OpeningFittings.Of(job, laid, OpeningPieces.Make(job, laid, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), laid.Regions)));
    }

    private static Job Opened(Job job, OpeningOrder order, Func<OpeningWish, OpeningWish> wish) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear" }, job.Cloths[0] with { Name = "mesh" }],
        Openings =
        [
            wish(new OpeningWish(
                order.Corner == 0
                    ? new OutlineWish(OutlineForm.Rectangle) { Width = SewingJobs.Mm(order.Size.Width), Height = SewingJobs.Mm(order.Size.Height) }
                    : new OutlineWish(OutlineForm.Rounded) { Width = SewingJobs.Mm(order.Size.Width), Height = SewingJobs.Mm(order.Size.Height), Corner = SewingJobs.Mm(order.Corner) },
                new OpeningPlace(order.Facet, SewingJobs.Mm(order.Right), SewingJobs.Mm(order.Up)) { Turned = order.Turned },
                LayingRule.Carried,
                SewingJobs.Mm(order.TurnUnder))),
        ],
    };

    private static Fault[] FaultsOf(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var laid = OpeningLayer.Lay(job, frame, shell);
        return [.. laid.Faults, .. OpeningSeamCheck.Faults(job, shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), laid.Openings)];
    }
}
