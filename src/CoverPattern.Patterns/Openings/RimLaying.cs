using System.Collections.Immutable;

namespace CoverPattern.Patterns.Openings;

/// <summary>A rim laid on a shell, or why it cannot lie there.</summary>
/// <param name="Rim">The rim; empty when it cannot.</param>
/// <param name="Stop">What stopped it; <see cref="WalkStop.Arrived"/> when nothing did.</param>
/// <param name="Where">Label of the face or corner at which it stopped, or of the hubs round which it was carried.</param>
/// <param name="GapMm">By how much a carried rim misses its own beginning, millimetres; 0 when it closes.</param>
internal sealed record RimLaying(ImmutableArray<RimStretch> Rim, WalkStop Stop, string Where, double GapMm)
{
    /// <summary>Whether there is a rim.</summary>
    internal bool IsLaid => !Rim.IsEmpty;

    /// <summary>Whether the rest of the outline comes up again over the finished edge.</summary>
    internal bool ComesBack { get; init; }
}
