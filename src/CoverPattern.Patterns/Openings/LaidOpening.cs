using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>An opening of any outline at its place.</summary>
/// <param name="Label">Such as "O1", counted in the order of the job's entries.</param>
/// <param name="Entry">Index of its entry in the job.</param>
/// <param name="Wish">That entry.</param>
/// <param name="Region">What it takes out of the shell.</param>
/// <param name="IsCarried">Whether it has its exact size along the cloth.</param>
public sealed record LaidOpening(string Label, int Entry, OpeningWish Wish, Region Region, bool IsCarried)
{
    /// <summary>Labels of the hubs inside it, sorted.</summary>
    public ImmutableArray<string> HubsInside { get; init; } = [];
}
