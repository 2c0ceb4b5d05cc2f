using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Finds who meets at every corner, by identity: from patch to patch across their common arcs.</summary>
/// <remarks>A point where two parts of the cover touch in a corner alone is two crossings.</remarks>
public static class CrossingFinder
{
    /// <summary>Finds all crossings.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <returns>In order of the first patch and corner that lies at each.</returns>
    public static ImmutableArray<Crossing> Find(Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);
        var nodes = new CornerNodes(shell, cut);
        var done = new HashSet<PatchSide>();
        var crossings = ImmutableArray.CreateBuilder<Crossing>();
        foreach (var corner in cut.Patches.SelectMany((patch, i) => patch.Corners.Select((_, edge) => new PatchSide(i, edge))))
        {
            // Corners of a rim's polyline are no places where lines meet.
            if (!done.Contains(corner) && !IsOnRim(cut, corner))
            {
                var crossing = WalkRound(shell, cut, nodes, corner);
                done.UnionWith(crossing.Corners);
                if (!IsOneSeam(cut, crossing))
                {
                    crossings.Add(crossing);
                }
            }
        }

        return crossings.ToImmutable();
    }

    private static Crossing WalkRound(Shell shell, Subdivision cut, CornerNodes nodes, PatchSide corner)
    {
        var first = FirstRound(cut, corner);
        var corners = new List<PatchSide>();
        PatchSide? at = first;
        while (at is { } here && (corners.Count == 0 || here != first))
        {
            corners.Add(here);
            at = Next(cut, here);
        }

        ImmutableArray<int> arcs = [.. corners.Select(side => ArcOf(cut, side))];
        if (at is null)
        {
            arcs = arcs.Add(ArcOf(cut, cut.Before(corners[^1])));
        }

        var node = nodes.NodeAt(corner);
        var label = node >= 0 ? shell.Nodes[node].Label : string.Join('+', arcs.Select(arc => cut.Arcs[arc].Label).Order(StringComparer.Ordinal));
        return new Crossing(label, nodes.PlaceOf(corner), arcs, [.. corners]);
    }

    /// <summary>At an edge of the cover the corner from which all others are reached counter-clockwise; elsewhere the corner itself.</summary>
    private static PatchSide FirstRound(Subdivision cut, PatchSide corner)
    {
        var at = corner;
        while (cut.Across(at) is { } across)
        {
            // The partner runs the other way: it ends here, and the edge behind it begins here.
            var before = cut.After(across);
            if (before == corner)
            {
                return corner;
            }

            at = before;
        }

        return at;
    }

    /// <summary>The next corner counter-clockwise: across the edge that ends here; null beyond an edge of the cover.</summary>
    private static PatchSide? Next(Subdivision cut, PatchSide corner) => cut.Across(cut.Before(corner));

    /// <summary>Where a seam goes on as a zip nothing crosses it.</summary>
    private static bool IsOneSeam(Subdivision cut, Crossing crossing) =>
        crossing is { Place: CrossingPlace.Edge, Corners.Length: 2, Arcs.Length: 2 } && crossing.Arcs.All(arc => cut.Arcs[arc].Role == EdgeRole.Seam);

    private static bool IsOnRim(Subdivision cut, PatchSide corner) =>
        cut.ArcAt(corner).Role == EdgeRole.Rim && ArcOf(cut, corner) == ArcOf(cut, cut.Before(corner));

    private static int ArcOf(Subdivision cut, PatchSide side) => cut.Patches[side.Patch].Arcs[side.Edge];
}
