using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Tells what a person should know of skirt, deck and measured heights before cloth is cut.</summary>
public static class SkirtCheck
{
    // An edge that hangs less than this below the deck ends on it, millimetres.
    private const double LeastHang = 5;

    /// <summary>Yields the notices.</summary>
    /// <param name="job">What was wished.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The shell fitted over it.</param>
    public static ImmutableArray<Notice> Check(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);

        return [.. Raise(job, frame), .. OnDeck(job), .. LeansIn(job, frame, shell)];
    }

    private static IEnumerable<Notice> Raise(Job job, Frame frame)
    {
        if (MeasuredRaise.Of(job, frame) is not { IsEmpty: false } heights)
        {
            yield break;
        }

        var worst = heights.MaxBy(height => Math.Abs(height.GapMm))!;
        yield return new Notice(
            worst.IsFarOff ? NoticeLevel.Warning : NoticeLevel.Note,
            "measured-raise",
            worst.Hub,
            FormattableString.Invariant($"Measured heights of the base hubs differ most from the model at {worst.Hub}: measured {worst.MeasuredMm:0.0} mm above the low hubs' mean, by the model {worst.ModelMm:0.0} mm, {Math.Abs(worst.GapMm):0.0} mm apart (more than {MeasuredRaise.LargestGap:0} mm hints at a slip in struts, deck or tape). Skirt and hem follow the measured heights, facets the strut lengths."));
    }

    /// <summary>Water runs down the cover: it must drop outside what is below.</summary>
    private static IEnumerable<Notice> OnDeck(Job job)
    {
        if (job.Deck.Ground.IsEmpty && job.Skirt.Shape != SkirtShape.Chords && job.Skirt.Drop.Millimetres < LeastHang)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "skirt-on-deck",
                "skirt.drop",
                FormattableString.Invariant($"The skirt ends on the deck ({job.Skirt.Drop.Millimetres:0.#} mm below it) instead of outside its side: water runs in. Let it hang over the deck's edge; 60 mm is usual."));
        }
    }

    private static IEnumerable<Notice> LeansIn(Job job, Frame frame, Shell shell)
    {
        if (job.Skirt.Shape != SkirtShape.Slope)
        {
            yield break;
        }

        var feet = shell.Nodes.Skip(frame.Hubs.Length).ToDictionary(node => node.Label, node => node.Position.Plan.Length, StringComparer.Ordinal);
        var inward = frame.Base.Where(hub => feet.ContainsKey(frame.Hubs[hub].Label + "f"))
            .Select(hub => (frame.Hubs[hub].Label, By: frame.Hubs[hub].Position.Plan.Length - feet[frame.Hubs[hub].Label + "f"]))
            .OrderByDescending(entry => entry.By).FirstOrDefault();
        if (inward.By > 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "skirt-leans-in",
                inward.Label,
                FormattableString.Invariant($"The skirt goes on in the slope of facets that lean inward below: at {inward.Label} its corner comes {inward.By:0.0} mm inside the hub centre. The deck's side must lie further in, or the skirt stands on the deck."));
        }
    }
}
