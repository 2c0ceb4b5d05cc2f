using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Seams;

/// <summary>A shell cut along its hem and rims: from here on who meets whom is known by identity, never by nearness.</summary>
/// <param name="Patches">In order of the shell's faces; faces wholly below the hem or taken out have none, others may have several.</param>
/// <param name="Arcs">In order of first use by the patches, rims last.</param>
public sealed record Subdivision(ImmutableArray<Patch> Patches, ImmutableArray<Arc> Arcs)
{
    /// <summary>The panels planned, by faces of the shell.</summary>
    public ImmutableArray<PlannedPanel> Panels { get; init; } = [];

    /// <summary>For each region what it takes out, cut along the same lines: its rims bear the same labels, lines inside it are folds.</summary>
    public ImmutableArray<Subdivision> Insides { get; init; } = [];

    /// <summary>Lines that are drawn on patches: where something sewn on beside an opening comes to lie.</summary>
    public ImmutableArray<DrawnLine> Drawn { get; init; } = [];

    /// <summary>The pairs of faces that meet along arcs of two sides, each pair both ways round.</summary>
    /// <param name="isMeant">Tells the arcs meant.</param>
    public ImmutableHashSet<(int Face, int Other)> FacesBeside(Func<Arc, bool> isMeant) =>
    [
        .. Arcs.Where(arc => arc.Second is not null && isMeant(arc))
            .Select(arc => (First: Patches[arc.First.Patch].Face, Second: Patches[arc.Second!.Value.Patch].Face))
            .SelectMany(pair => new[] { (pair.First, pair.Second), (pair.Second, pair.First) }),
    ];

    /// <summary>For each patch the first of those with which it hangs together over folds: they are cut as one piece.</summary>
    public ImmutableArray<int> PiecesOfPatches()
    {
        int[] first = [.. Enumerable.Range(0, Patches.Length)];
        int Find(int patch) => first[patch] == patch ? patch : first[patch] = Find(first[patch]);
        foreach (var arc in Arcs.Where(arc => arc.Role == EdgeRole.Fold && arc.Second is not null))
        {
            var (one, other) = (Find(arc.First.Patch), Find(arc.Second!.Value.Patch));
            first[Math.Max(one, other)] = Math.Min(one, other);
        }

        return [.. first.Select(Find)];
    }

    /// <summary>The arc on which an edge of a patch lies.</summary>
    /// <param name="side">The edge.</param>
    public Arc ArcAt(PatchSide side) => Arcs[Patches[side.Patch].Arcs[side.Edge]];

    /// <summary>The edge on the other side of a patch's edge; null at hem and rims. Only these have arcs of several edges.</summary>
    /// <param name="side">The edge.</param>
    public PatchSide? Across(PatchSide side)
    {
        var arc = ArcAt(side);
        return arc.First == side ? arc.Second : arc.Second is null ? null : arc.First;
    }

    /// <summary>The patch's edge behind an edge.</summary>
    /// <param name="side">The edge.</param>
    public PatchSide After(PatchSide side) => side with { Edge = (side.Edge + 1) % Patches[side.Patch].Corners.Length };

    /// <summary>The patch's edge before an edge.</summary>
    /// <param name="side">The edge.</param>
    public PatchSide Before(PatchSide side) => side with { Edge = (side.Edge + Patches[side.Patch].Corners.Length - 1) % Patches[side.Patch].Corners.Length };
}
