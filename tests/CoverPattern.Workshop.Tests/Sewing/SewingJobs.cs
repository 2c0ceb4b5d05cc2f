using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Jobs whose pieces are sewn up, the corridor to their pieces.json, and the same order in the tests' own numbers.</summary>
internal static class SewingJobs
{
    /// <summary>A cover with plain values; change it with <c>with</c>.</summary>
    internal static Job Dome(CoverSizes sizes) => new(
        1,
        "sewn up",
        new DateOnly(2026, 3, 1),
        1,
        new FrameWish(FrameFamily.Icosahedron, sizes.Frequency, sizes.Rows, string.Empty, FrameMeasure.Radius, Mm(sizes.Radius)),
        new StandOffWish(Mm(sizes.StandOff), Mm(0), Mm(0)),
        sizes.Ease,
        new SkirtWish(Mm(sizes.Drop)),
        new HemWish(Mm(38), Mm(12)),
        SeamWish.Of(MakeUpForm.Plain, Mm(15)),
        [new Cloth("canvas", Mm(2030), Mm(10), Mm(10), 350, Nap.None, HasFace: true)],
        new LayWish(Mm(2), Mm(30), TurnRule.Grain, FaceDown: true, 10, 1),
        [],
        []);

    internal static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    /// <summary>The cover with windows in facets named; two cloths more, of panes and screens.</summary>
    internal static Job Windowed(Job job, params WindowWish[] windows) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear" }, job.Cloths[0] with { Name = "mesh" }],
        Windows = [.. windows],
    };

    /// <summary>A window with screen and plain values.</summary>
    internal static WindowWish Window(double aperture, params string[] facets) =>
        new([.. facets], null, Mm(aperture), Mm(35), Mm(20), Mm(12), "clear") { Screen = "mesh" };

    /// <summary>The order as the assembler is told it.</summary>
    /// <param name="job">Its frame is the icosahedron with a corner up unless another is given.</param>
    /// <param name="frame">The frame in the tests' own numbers.</param>
    internal static SewingOrder OrderOf(Job job, TrueMesh? frame = null) => new(
        new CoverSizes(job.Frame.Frequency, job.Frame.Rows, job.Frame.Size.Millimetres, Math.Max(job.StandOff.TubeRadius.Millimetres, job.StandOff.HubHeight.Millimetres) + job.StandOff.Padding.Millimetres, job.Skirt.Drop.Millimetres, job.Ease) { Base = BaseOf(job), Frame = frame },
        FormOf(job.Seam.MakeUp),
        job.Seam.MakeUp.Width.Millimetres,
        job.Hem.Depth.Millimetres + job.Hem.TurnUnder.Millimetres + (job.Hem.Fitting?.Millimetres ?? 0),
        job.Covers,
        job.Cloths[0].HasFace,
        job.Cloths[0].Nap == Nap.OneWay ? GrainRule.OneWay : job.Lay.Turns == TurnRule.Free ? GrainRule.Free : GrainRule.EitherWay)
    {
        Name = job.Seam.MakeUp.Name,
        Others = [.. job.Seam.Others.Select(other => new OrderedMakeUp(other.Set == SeamSet.Rows ? "rows" : "uprights", other.MakeUp.Name, FormOf(other.MakeUp), other.MakeUp.Width.Millimetres))],
        ClosingMm = job.Seam.Closing?.Allowance.Millimetres,
        HemDepth = job.Hem.Depth.Millimetres,
        StopsAtHubs = job.Seam.StopAtHubs,
        IsTrimmed = job.Seam.Corners == CornerStyle.Trimmed,
        TieDistance = job.Marks.Ties == TieRule.None ? null : job.Marks.TieDistance.Millimetres,
        SplashMm = job.Skirt.Splash?.Width.Millimetres,
        Pierces = job.Marks.Pierce,
        PatchesAtHub = job.Marks.HubPatches switch { HubPatchPlace.None => 0, HubPatchPlace.Both => 2, _ => 1 },
        Plan = PlanOf(job, frame),
        Windows = [.. job.Windows.SelectMany(wish => wish.Facets.Select(facet => new WindowOrder(
            facet,
            wish.Aperture.Millimetres / 2,
            (wish.Aperture.Millimetres / 2) + wish.Ring.Millimetres,
            (wish.Aperture.Millimetres / 2) + wish.Lap.Millimetres,
            wish.TurnUnder.Millimetres,
            wish.Screen is not null,
            wish.Right.Millimetres,
            wish.Up.Millimetres)))],
    };

    /// <summary>The liner of a job as an order of its own, in the tests' numbers: below the cover by the gap, and never among tubes and hubs.</summary>
    internal static Job Inner(Job job)
    {
        var (stand, liner) = (job.StandOff, job.Liner!);
        var proud = Math.Max(stand.TubeRadius.Millimetres, stand.HubHeight.Millimetres);
        var standOff = Mm(Math.Min(proud + stand.Padding.Millimetres - liner.Gap.Millimetres, -proud));
        return job with
        {
            StandOff = new StandOffWish(standOff, standOff, Mm(0)),
            Ease = 0,
            Skirt = new SkirtWish(Mm(-liner.Hem.Millimetres)),
            Hem = new HemWish(Mm(25), Mm(12)),
            Seam = new SeamWish(MakeUp.Of(MakeUpForm.Plain, Mm(15)) with { Name = "liner plain" }),
            Marks = new MarkWish(TieRule.Every, Mm(0), HubPatchPlace.None, default, default),
            Windows = [],
        };
    }

    private static string FormOf(MakeUp makeUp) => makeUp.Form switch
    {
        MakeUpForm.Plain => "plain",
        MakeUpForm.Lapped => "lapped",
        MakeUpForm.Felled => "felled",
        MakeUpForm.FolderFelled => "folder-felled",
        MakeUpForm.SplitWelded => "split-welded",
        MakeUpForm.Bound => "bound",
        MakeUpForm.Zip => "zip",
        _ => "welded",
    };

    /// <summary>What the job's panels mean, read by eye: an icosahedron has five sectors.</summary>
    private static SewnPlan PlanOf(Job job, TrueMesh? frame)
    {
        var (rows, sectors) = (frame?.Rows ?? job.Frame.Rows, frame?.Sectors ?? 5);
        var named = job.Panels.Where(panel => panel.Rows is not null).SelectMany(panel => Enumerable.Range(panel.Rows!.First, panel.Rows.Last - panel.Rows.First + 1))
            .Concat(job.Panels.SelectMany(panel => panel.Facets).Select(SewnPlan.RowOf)).ToHashSet();
        int[] RowsOf(PanelWish panel) => panel.Rows is { } own
            ? [.. Enumerable.Range(own.First, own.Last - own.First + 1)]
            : [.. Enumerable.Range(1, rows).Where(row => !named.Contains(row))];
        return new SewnPlan(
            job.Panels.Where(panel => panel.Form == PanelForm.Bands)
                .SelectMany(panel => RowsOf(panel).Select(row => (row, Parts: panel.Parts ?? (panel.Longest is null && panel.At.IsEmpty ? sectors : 0)))).ToDictionary(),
            [.. job.Panels.Where(panel => panel.Form == PanelForm.Gores).Select(RowsOf)],
            job.Panels.Where(panel => panel.Form == PanelForm.Group)
                .OrderBy(panel => panel.Name.Length > 0)
                .Select((panel, number) => (Name: panel.Name.Length > 0 ? panel.Name : FormattableString.Invariant($"K{number + 1}"), Facets: panel.Facets.ToArray()))
                .ToDictionary(entry => entry.Name, entry => entry.Facets, StringComparer.Ordinal),
            new HashSet<string>(StringComparer.Ordinal))
        {
            Sectors = sectors,
            Bent = [.. frame?.BentTogether() ?? []],
        };
    }

    private static BaseOrder BaseOf(Job job)
    {
        static double[]? Listed(IEnumerable<HubHeight> heights) =>
            heights.Any() ? [.. heights.OrderBy(height => height.Hub, StringComparer.Ordinal).Select(height => height.Height.Millimetres)] : null;
        return new BaseOrder(job.Skirt.Shape switch { SkirtShape.Slope => "slope", SkirtShape.Chords => "chords", _ => "vertical" })
        {
            Measured = Listed(job.Deck.Heights),
            Raise = job.Deck.Raise?.Millimetres,
            Ground = Listed(job.Deck.Ground),
            IsMean = job.Deck.Datum == DeckDatum.Mean,
            Plinth = job.Deck.Plinth?.Millimetres ?? 0,
            Fall = job.Deck.Tilt?.Fall ?? 0,
            Towards = job.Deck.Tilt?.TowardsDegrees ?? 0,
        };
    }

    /// <summary>The text of pieces.json.</summary>
    internal static string PiecesText(Job job) => Encoding.UTF8.GetString(PiecesFile.Write(Finish(job).Set));

    /// <summary>Why no pieces are made; empty where they are.</summary>
    internal static ImmutableArray<Fault> FaultsOf(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        ImmutableArray<Fault> faults = [.. PlaneCheck.Faults(job, frame, shell), .. PanelPlanner.Plan(job, frame, shell).Faults];
        return faults.IsEmpty ? Finish(job).Faults : faults;
    }

    internal static PieceFinishing Finish(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var panels = PanelPlanner.Plan(job, frame, shell);
        Assert.Empty(panels.Faults);
        var openings = OpeningLayer.Lay(job, frame, shell);
        var plan = SeamPlanner.Plan(job, shell, panels);
        plan = RoofLine.Find(job, frame, shell)?.ZipIn(plan) ?? plan;
        Assert.Empty(RoofCheck.Faults(job, frame, shell, plan, openings));
        var cut = HubStops.Shorten(job, shell, SurfaceDrawing.On(Subdivider.Cut(shell, plan, openings.Regions), openings.Lines));
        var flat = PanelFlattener.Flatten(cut);
        ImmutableArray<AddedPiece> added = [.. WindowPieces.Make(job, openings.Windows), .. OpeningPieces.Make(job, openings, cut), .. PipePieces.Make(shell, plan, openings.Pipes), .. HubPatchPieces.Make(job, shell, cut), .. SplashBand.Make(job, shell, cut, flat), .. RoofFlap.Make(job, frame, shell, cut), .. GroundFlap.Make(job, shell, cut), .. InsulationPads.Make(job, frame, openings)];
        var finishing = PieceFinisher.Finish(job, shell, cut, flat, [.. added, .. BagPieces.Make(job, flat, added)]);
        if (RoofScreen.Make(job, frame, shell, plan) is { } screen)
        {
            Assert.Empty(screen.Faults);
            finishing = finishing with { Set = JoinedSets.Join(finishing.Set, screen.Set, job.Covers) };
        }

        if (Liner.Make(job, frame, openings) is { } liner)
        {
            Assert.Empty(liner.Faults);
            return finishing with { Set = JoinedSets.Join(finishing.Set, liner.Set, job.Covers) };
        }

        return finishing;
    }
}
