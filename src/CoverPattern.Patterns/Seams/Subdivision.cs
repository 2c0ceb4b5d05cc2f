using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>A shell cut along its hem: from here on who meets whom is known by identity, never by nearness.</summary>
/// <param name="Patches">In order of the shell's faces; faces wholly below the hem have none.</param>
/// <param name="Arcs">In order of first use by the patches.</param>
public sealed record Subdivision(ImmutableArray<Patch> Patches, ImmutableArray<Arc> Arcs)
{
    /// <summary>The panels planned, by faces of the shell.</summary>
    public ImmutableArray<PlannedPanel> Panels { get; init; } = [];
}
