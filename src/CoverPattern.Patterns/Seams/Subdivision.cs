using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Seams;

/// <summary>A shell cut along its hem: from here on who meets whom is known by identity, never by nearness.</summary>
/// <param name="Patches">In order of the shell's faces; faces wholly below the hem have none.</param>
/// <param name="Arcs">In order of first use by the patches.</param>
public sealed record Subdivision(ImmutableArray<Patch> Patches, ImmutableArray<Arc> Arcs)
{
    /// <summary>The panels planned, by faces of the shell.</summary>
    public ImmutableArray<PlannedPanel> Panels { get; init; } = [];

    /// <summary>The pairs of faces that meet along arcs of two sides, each pair both ways round.</summary>
    /// <param name="isMeant">Tells the arcs meant.</param>
    public ImmutableHashSet<(int Face, int Other)> FacesBeside(Func<Arc, bool> isMeant) =>
    [
        .. Arcs.Where(arc => arc.Second is not null && isMeant(arc))
            .Select(arc => (First: Patches[arc.First.Patch].Face, Second: Patches[arc.Second!.Value.Patch].Face))
            .SelectMany(pair => new[] { (pair.First, pair.Second), (pair.Second, pair.First) }),
    ];
}
