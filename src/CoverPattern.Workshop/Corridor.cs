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

        var made = PieceStages.Run(job, Say);
        if (made.Pieces is not { } pieces)
        {
            return new WorkshopOutcome(null, made.Faults);
        }

        Say("lays");
        var lays = LayPlanner.Plan(job, pieces.Set, Relay(progress), cancel);
        cancel.ThrowIfCancellationRequested();
        Say("proof");
        Prove(job, lays, pieces.Set);
        var estimate = Estimator.Count(job, pieces.Set, lays);
        return new WorkshopOutcome(
            new Result(jobText, job, pieces.Frame, pieces.Shell, pieces.Cut, pieces.Set, lays, estimate, NoticesOf(job, pieces, lays, estimate))
            {
                Crossings = pieces.Bulks,
                Openings = pieces.Openings.Openings,
                Pipes = pieces.Openings.Pipes,
                Liner = pieces.Liner,
                Vents = job.Vents is { } vents ? VentSheet.Of(vents, pieces.Shell, pieces.Openings, pieces.Cut) : null,
            },
            []);

        void Say(string stage)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Report(new WorkshopStep(stage, 0, string.Empty));
        }
    }

    private static ImmutableArray<Notice> NoticesOf(Job job, MadePieces pieces, ImmutableArray<Lay> lays, Estimate estimate) =>
    [
        .. StrutCheck.Check(job.Frame, pieces.Frame)
            .Concat(ShellCheck.Check(job, pieces.Frame, pieces.Shell))
            .Concat(SkirtCheck.Check(job, pieces.Frame, pieces.Shell))
            .Concat(ClearanceCheck.Check(job, pieces.Frame, pieces.Shell))
            .Concat(pieces.Panels.Notices)
            .Concat(SubdivisionCheck.Check(pieces.Shell, pieces.Cut))
            .Concat(HemCheck.Check(job, pieces.Shell, pieces.Cut))
            .Concat(SeamWishCheck.Notices(job, pieces.Plan))
            .Concat(BulkCheck.Notices(job, pieces.Bulks))
            .Concat(HubPatchCheck.Notices(job, pieces.Shell, pieces.Cut))
            .Concat(pieces.Notices)
            .Concat(pieces.Openings.Notices)
            .Concat(InsulationPads.Notices(job, pieces.Frame, pieces.Openings))
            .Concat(RoofNotices.Of(job, pieces.Frame, pieces.Shell, pieces.Openings, pieces.Set))
            .Concat(LayNotices.Of(job, lays, pieces.Set))
            .Concat(Cautions.For(job, estimate))
            .OrderByDescending(notice => notice.Level),
    ];

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
