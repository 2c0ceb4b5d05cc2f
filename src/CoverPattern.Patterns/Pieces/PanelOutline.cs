using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Walks round a panel by identity: along a patch's edges, across each fold to the patch beyond it.</summary>
internal static class PanelOutline
{
    internal static ImmutableArray<PanelEdge> Walk(Subdivision subdivision, Dictionary<int, RigidMap> maps, SortedSet<int> folds)
    {
        var start = maps.Keys.Order()
            .SelectMany(patch => subdivision.Patches[patch].Arcs.Select((arc, edge) => (Side: new PatchSide(patch, edge), arc)))
            .First(entry => !folds.Contains(entry.arc)).Side;
        var outline = ImmutableArray.CreateBuilder<PanelEdge>();
        var side = start;
        do
        {
            outline.Add(EdgeAt(subdivision, maps, side));
            side = NextOnOutline(subdivision, folds, side);
        }
        while (side != start);

        var edges = maps.Keys.Sum(patch => subdivision.Patches[patch].Arcs.Count(arc => !folds.Contains(arc)));
        return edges == outline.Count
            ? outline.ToImmutable()
            : throw new ArgumentException("A panel has a hole: a ring of folds is closed round something that is cut out.", nameof(subdivision));
    }

    private static PanelEdge EdgeAt(Subdivision subdivision, Dictionary<int, RigidMap> maps, PatchSide side)
    {
        var patch = subdivision.Patches[side.Patch];
        var next = (side.Edge + 1) % patch.Corners.Length;
        var map = maps[side.Patch];
        return new PanelEdge(side, patch.Arcs[side.Edge], map.Apply(patch.Corners[side.Edge]), map.Apply(patch.Corners[next]));
    }

    private static PatchSide NextOnOutline(Subdivision subdivision, SortedSet<int> folds, PatchSide side)
    {
        var next = Following(subdivision, side);
        while (folds.Contains(subdivision.Patches[next.Patch].Arcs[next.Edge]))
        {
            var arc = subdivision.Arcs[subdivision.Patches[next.Patch].Arcs[next.Edge]];
            next = Following(subdivision, arc.First == next ? arc.Second!.Value : arc.First);
        }

        return next;
    }

    private static PatchSide Following(Subdivision subdivision, PatchSide side) =>
        side with { Edge = (side.Edge + 1) % subdivision.Patches[side.Patch].Corners.Length };
}
