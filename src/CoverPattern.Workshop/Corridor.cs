using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Lays.Estimates;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Workshop;

/// <summary>The corridor: every stage once, in order.</summary>
public static class Corridor
{
    /// <summary>Makes everything from a job.</summary>
    /// <param name="job">The job as read.</param>
    /// <param name="jobText">Its file as typed; travels into the result.</param>
    /// <param name="progress">Told of each stage; may be null.</param>
    /// <param name="cancel">Stops the work between two steps, the search for lays at any time.</param>
    /// <returns>The result, or faults that only the pieces could show.</returns>
    /// <exception cref="WorkException">The work cannot be done; the message says what stands in the way.</exception>
    /// <exception cref="LayNotProvedException">Our fault: a lay failed its proof.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static WorkshopOutcome Run(Job job, ReadOnlyMemory<byte> jobText, IProgress<WorkshopStep>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(job);

        Say("frame");
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        Say("pieces");
        var panels = PanelPlanner.Plan(job, frame, shell);
        ImmutableArray<Fault> bent = [.. FacetReach.Faults(shell), .. PlaneCheck.Faults(job, frame, shell), .. panels.Faults];
        if (!bent.IsEmpty)
        {
            return new WorkshopOutcome(null, bent);
        }

        var openings = OpeningLayer.Lay(job, frame, shell);
        var roof = RoofLine.Find(job, frame, shell);
        var plan = SeamPlanner.Plan(job, shell, panels);
        plan = roof?.ZipIn(plan) ?? plan;
        ImmutableArray<Fault> wrong =
        [
            .. StockList.Faults(job.Frame, frame),
            .. SeamWishCheck.Faults(job, shell, plan),
            .. openings.Faults,
            .. RoofCheck.Faults(job, frame, shell, plan, openings),
            .. OpeningSeamCheck.Faults(job, shell, plan, openings.Windows),
            .. OpeningSeamCheck.Faults(job, shell, plan, openings.Openings),
            .. OpeningSeamCheck.Faults(plan, openings.Slits),
            .. SeamZipCheck.Faults(job, shell, plan, openings),
            .. PipeSeamCheck.Faults(job, shell, plan, openings.Pipes),
            .. SplashCheck.Faults(job, shell, openings.Windows),
            .. SplashCheck.LapFaults(job, shell, openings.Openings),
            .. VentSheet.Faults(job, openings),
            .. InsulationPads.Faults(job, frame),
        ];
        if (!wrong.IsEmpty)
        {
            return new WorkshopOutcome(null, wrong);
        }

        var cut = HubStops.Shorten(job, shell, SurfaceDrawing.On(Subdivider.Cut(shell, plan, openings.Regions), openings.Lines));
        var flat = PanelFlattener.Flatten(cut);
        ImmutableArray<AddedPiece> added =
        [
            .. WindowPieces.Make(job, openings.Windows),
            .. OpeningPieces.Make(job, openings, cut),
            .. PipePieces.Make(shell, plan, openings.Pipes),
            .. HubPatchPieces.Make(job, shell, cut),
            .. SplashBand.Make(job, shell, cut, flat),
            .. RoofFlap.Make(job, frame, shell, cut),
            .. GroundFlap.Make(job, shell, cut),
            .. InsulationPads.Make(job, frame, openings),
        ];
        if (BagPieces.Faults(job, added) is { IsEmpty: false } unknown)
        {
            return new WorkshopOutcome(null, unknown);
        }

        added = [.. added, .. BagPieces.Make(job, flat, added)];
        var finishing = PieceFinisher.Finish(job, shell, cut, flat, added);
        var bulks = BulkCounter.Count(job, cut, CrossingFinder.Find(shell, cut), PatchedHubs.Of(job, shell, cut, finishing.Set));
        var liner = Liner.Make(job, frame, openings);
        var screen = RoofScreen.Make(job, frame, shell, plan);
        ImmutableArray<Fault> faults = [.. finishing.Faults, .. liner?.Faults ?? [], .. screen?.Faults ?? [], .. BulkCheck.Faults(job, bulks), .. HubPatchCheck.Faults(job, shell, cut)];
        if (!faults.IsEmpty)
        {
            return new WorkshopOutcome(null, faults);
        }

        var roofed = screen is null ? finishing.Set : JoinedSets.Join(finishing.Set, screen.Set, job.Covers);
        var whole = liner is null ? roofed : JoinedSets.Join(roofed, liner.Set, job.Covers);
        var set = OutsidePatterns.Add(whole, job) with { Fittings = [.. OpeningFittings.Of(job, openings, added), .. RoofFittings.Of(job, frame, shell, cut, added)] };
        Say("lays");
        var lays = LayPlanner.Plan(job, set, Relay(progress), cancel);
        cancel.ThrowIfCancellationRequested();
        Say("proof");
        Prove(job, lays, set);
        var estimate = Estimator.Count(job, set, lays);
        ImmutableArray<Notice> notices =
            [
                .. StrutCheck.Check(job.Frame, frame)
                    .Concat(ShellCheck.Check(job, frame, shell))
                    .Concat(SkirtCheck.Check(job, frame, shell))
                    .Concat(ClearanceCheck.Check(job, frame, shell))
                    .Concat(panels.Notices)
                    .Concat(SubdivisionCheck.Check(shell, cut))
                    .Concat(HemCheck.Check(job, shell, cut))
                    .Concat(SeamWishCheck.Notices(job, plan))
                    .Concat(BulkCheck.Notices(job, bulks))
                    .Concat(HubPatchCheck.Notices(job, shell, cut))
                    .Concat(finishing.Notices)
                    .Concat(openings.Notices)
                    .Concat(InsulationPads.Notices(job, frame, openings))
                    .Concat(RoofNotices.Of(job, frame, shell, openings, set))
                    .Concat(LayNotices.Of(job, lays, set))
                    .Concat(Cautions.For(job, estimate))
                    .OrderByDescending(notice => notice.Level),
            ];
        return new WorkshopOutcome(new Result(jobText, job, frame, shell, cut, set, lays, estimate, notices) { Crossings = bulks, Pipes = openings.Pipes, Liner = liner, Vents = job.Vents is { } vents ? VentSheet.Of(vents, shell, openings, cut) : null }, []);

        void Say(string stage)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report(new WorkshopStep(stage, 0, string.Empty));
        }
    }

    private static void Prove(Job job, ImmutableArray<Lay> lays, PieceSet pieces)
    {
        ImmutableArray<LayFinding> findings = [.. LayProof.Check(lays, pieces), .. OrderProof.Check(job, lays, pieces)];
        if (!findings.IsEmpty)
        {
            throw new LayNotProvedException(findings);
        }
    }

    private static Relay<NestingProgress>? Relay(IProgress<WorkshopStep>? progress) => progress is null
        ? null
        : new Relay<NestingProgress>(step => progress.Report(new WorkshopStep(
            "lays",
            step.Units > 0 ? (double)step.UnitsDone / step.Units : 0,
            double.IsFinite(step.Length) ? FormattableString.Invariant($"shortest so far {step.Length / 1000:0.00} m") : string.Empty)));
}
