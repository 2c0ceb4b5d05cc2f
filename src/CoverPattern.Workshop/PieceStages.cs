using System;
using System.Collections.Immutable;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Workshop;

/// <summary>The corridor's stages from the job to pieces ready to lay, every check of the job among them.</summary>
public static class PieceStages
{
    /// <summary>Makes the pieces of a job.</summary>
    /// <param name="job">The job as read.</param>
    /// <param name="say">Told of each stage; may throw to stop the work.</param>
    /// <returns>The pieces, or what in the job is wrong.</returns>
    /// <exception cref="WorkException">The work cannot be done; the message says what stands in the way.</exception>
    public static PieceOutcome Run(Job job, Action<string>? say = null)
    {
        ArgumentNullException.ThrowIfNull(job);

        say?.Invoke("frame");
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        say?.Invoke("pieces");
        var panels = PanelPlanner.Plan(job, frame, shell);
        ImmutableArray<Fault> bent = [.. FacetReach.Faults(shell), .. PlaneCheck.Faults(job, frame, shell), .. panels.Faults];
        if (!bent.IsEmpty)
        {
            return new PieceOutcome(null, bent);
        }

        var openings = OpeningLayer.Lay(job, frame, shell);
        var roof = RoofLine.Find(job, frame, shell);
        var plan = SeamPlanner.Plan(job, shell, panels);
        plan = roof?.ZipIn(plan) ?? plan;
        if (Wrong(job, frame, shell, plan, openings) is { IsEmpty: false } wrong)
        {
            return new PieceOutcome(null, wrong);
        }

        var cut = HubStops.Shorten(job, shell, SurfaceDrawing.On(Subdivider.Cut(shell, plan, openings.Regions), openings.Lines));
        var flat = PanelFlattener.Flatten(cut);
        var added = Added(job, (frame, shell, plan), openings, (cut, flat));
        if (BagPieces.Faults(job, added) is { IsEmpty: false } unknown)
        {
            return new PieceOutcome(null, unknown);
        }

        added = [.. added, .. BagPieces.Make(job, flat, added)];
        var finishing = PieceFinisher.Finish(job, shell, cut, flat, added);
        var bulks = BulkCounter.Count(job, cut, CrossingFinder.Find(shell, cut), PatchedHubs.Of(job, shell, cut, finishing.Set));
        var liner = Liner.Make(job, frame, openings);
        var screen = RoofScreen.Make(job, frame, shell, plan);
        ImmutableArray<Fault> faults = [.. finishing.Faults, .. liner?.Faults ?? [], .. screen?.Faults ?? [], .. BulkCheck.Faults(job, bulks), .. HubPatchCheck.Faults(job, shell, cut)];
        if (!faults.IsEmpty)
        {
            return new PieceOutcome(null, faults);
        }

        var roofed = screen is null ? finishing.Set : JoinedSets.Join(finishing.Set, screen.Set, job.Covers);
        var whole = liner is null ? roofed : JoinedSets.Join(roofed, liner.Set, job.Covers);
        var set = OutsidePatterns.Add(whole, job) with { Fittings = [.. OpeningFittings.Of(job, openings, added), .. RoofFittings.Of(job, frame, shell, cut, added)] };
        return new PieceOutcome(new MadePieces(frame, shell, panels, plan, openings, cut, set) { Bulks = bulks, Liner = liner, Notices = finishing.Notices }, []);
    }

    /// <summary>What the job says wrongly of what lies on the cover.</summary>
    private static ImmutableArray<Fault> Wrong(Job job, Frame frame, Shell shell, SeamPlan plan, OpeningLaying openings) =>
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

    /// <summary>Everything beside the cover's panels and the bag.</summary>
    private static ImmutableArray<AddedPiece> Added(Job job, (Frame Frame, Shell Shell, SeamPlan Plan) on, OpeningLaying openings, (Subdivision Cut, ImmutableArray<Panel> Flat) laid) =>
    [
        .. WindowPieces.Make(job, openings.Windows),
        .. OpeningPieces.Make(job, openings, laid.Cut),
        .. PipePieces.Make(on.Shell, on.Plan, openings.Pipes),
        .. HubPatchPieces.Make(job, on.Shell, laid.Cut),
        .. SplashBand.Make(job, on.Shell, laid.Cut, laid.Flat),
        .. RoofFlap.Make(job, on.Frame, on.Shell, laid.Cut),
        .. GroundFlap.Make(job, on.Shell, laid.Cut),
        .. InsulationPads.Make(job, on.Frame, openings),
    ];
}
