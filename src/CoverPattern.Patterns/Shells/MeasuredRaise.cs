using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>How high a base hub was measured, against the model.</summary>
/// <param name="Hub">Label of the base hub.</param>
/// <param name="ModelMm">Its height over the lowest base hubs by the model, hub centre to hub centre, millimetres.</param>
/// <param name="MeasuredMm">The same as measured, over the mean of the hubs that are lowest by the model.</param>
public sealed record MeasuredRaise(string Hub, double ModelMm, double MeasuredMm)
{
    /// <summary>More than this apart, millimetres, hints at a slip: 2 mm in a class of struts explain 2.6 mm (own calculation).</summary>
    public const double LargestGap = 10;

    /// <summary>How much higher it was measured than the model has it.</summary>
    public double GapMm => MeasuredMm - ModelMm;

    /// <summary>Whether the two are so far apart that somebody should look again.</summary>
    public bool IsFarOff => Math.Abs(GapMm) > LargestGap;

    /// <summary>Every base hub in its order; empty when nobody measured.</summary>
    public static ImmutableArray<MeasuredRaise> Of(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        if (!job.Deck.IsMeasured)
        {
            return [];
        }

        var raised = HemHeights.Of(job, frame, StandOff.Move(frame, job.StandOff.Millimetres)).Raised;
        var low = frame.Base.Where(hub => HemHeights.IsLow(frame, hub)).Average(hub => raised[hub]);
        return [.. frame.Base.Select(hub => new MeasuredRaise(
            frame.Hubs[hub].Label, frame.Hubs[hub].Position.Z, frame.Hubs[hub].Position.Z + raised[hub] - low))];
    }
}
