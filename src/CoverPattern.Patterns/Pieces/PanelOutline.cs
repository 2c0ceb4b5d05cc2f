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
    /// <summary>The edges round the panel, and those round each hole in it.</summary>
    /// <param name="subdivision">The cut-up surface.</param>
    /// <param name="maps">The panel's patches, each with its move to the panel's plane.</param>
    /// <param name="folds">Arcs inside it.</param>
    internal static (ImmutableArray<PanelEdge> Outline, ImmutableArray<ImmutableArray<PanelEdge>> Holes) Walk(
        Subdivision subdivision, Dictionary<int, RigidMap> maps, SortedSet<int> folds)
    {
        var left = new HashSet<PatchSide>(maps.Keys.SelectMany(patch => subdivision.Patches[patch].Arcs.Select((arc, edge) => (Side: new PatchSide(patch, edge), arc)))
            .Where(entry => !folds.Contains(entry.arc)).Select(entry => entry.Side));
        var loops = new List<ImmutableArray<PanelEdge>>();
        foreach (var side in left.OrderBy(side => side.Patch).ThenBy(side => side.Edge).ToArray())
        {
            if (left.Contains(side))
            {
                var loop = Loop(subdivision, maps, folds, side);
                left.ExceptWith(loop.Select(edge => edge.Side));
                loops.Add(AtArcsStart(subdivision, loop));
            }
        }

        var outer = loops.MaxBy(loop => Rings.SignedArea([.. loop.Select(edge => edge.From)]));
        ImmutableArray<ImmutableArray<PanelEdge>> holes = [.. loops.Where(loop => loop != outer)];
        return holes.All(hole => hole.All(edge => subdivision.Arcs[edge.Arc].Role == EdgeRole.Rim))
            ? (outer, holes)
            : throw new ArgumentException("A panel has a hole: a ring of folds is closed round something that is cut out.", nameof(subdivision));
    }

    private static ImmutableArray<PanelEdge> Loop(Subdivision subdivision, Dictionary<int, RigidMap> maps, SortedSet<int> folds, PatchSide start)
    {
        var outline = ImmutableArray.CreateBuilder<PanelEdge>();
        var side = start;
        do
        {
            outline.Add(EdgeAt(subdivision, maps, side));
            side = NextOnOutline(subdivision, folds, side);
        }
        while (side != start);

        return outline.ToImmutable();
    }

    /// <summary>The same loop from the first edge at which an arc begins, so that no rim is torn apart.</summary>
    private static ImmutableArray<PanelEdge> AtArcsStart(Subdivision subdivision, ImmutableArray<PanelEdge> loop)
    {
        bool IsStart(PanelEdge edge) => subdivision.Arcs[edge.Arc] is var arc && (arc.Role != EdgeRole.Rim || arc.First == edge.Side);
        var first = Enumerable.Range(0, loop.Length).First(i => IsStart(loop[i]));
        return [.. loop[first..], .. loop[..first]];
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
        var next = subdivision.After(side);
        while (folds.Contains(subdivision.Patches[next.Patch].Arcs[next.Edge]))
        {
            next = subdivision.After(subdivision.Across(next)!.Value);
        }

        return next;
    }
}
