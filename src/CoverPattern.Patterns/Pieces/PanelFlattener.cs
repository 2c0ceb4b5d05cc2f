using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Joins patches over their folds and lays them flat, exactly.</summary>
/// <remarks>
/// Each further patch is laid over the one fold edge it shares. Where folds
/// close a ring the composed turn must be the identity: a hub inside a panel, whose angles do not sum to a full turn, is refused.
/// </remarks>
public static class PanelFlattener
{
    // Folds that close a ring must come out together this well, millimetres.
    private const double Closure = 0.001;

    /// <summary>Makes one panel of every set of patches joined by folds.</summary>
    /// <param name="subdivision">The cut-up surface.</param>
    /// <returns>In order of the panels planned; the main patch is the first that is left of the panel's faces as they are listed.</returns>
    /// <exception cref="ArgumentException">A panel cannot be laid flat: its folds surround a hub, or it would lie over itself.</exception>
    public static ImmutableArray<Panel> Flatten(Subdivision subdivision)
    {
        ArgumentNullException.ThrowIfNull(subdivision);

        var done = new bool[subdivision.Patches.Length];
        var panels = ImmutableArray.CreateBuilder<Panel>();
        foreach (var patch in InOrderOfPanels(subdivision))
        {
            if (!done[patch])
            {
                panels.Add(FlattenFrom(subdivision, patch, done));
            }
        }

        return panels.ToImmutable();
    }

    private static IEnumerable<int> InOrderOfPanels(Subdivision subdivision)
    {
        var patchesOf = subdivision.Patches.Select((patch, i) => (patch.Face, i)).ToLookup(entry => entry.Face, entry => entry.i);
        return subdivision.Panels.SelectMany(panel => panel.Faces).SelectMany(face => patchesOf[face]).Concat(Enumerable.Range(0, subdivision.Patches.Length));
    }

    private static Panel FlattenFrom(Subdivision subdivision, int main, bool[] done)
    {
        var maps = new Dictionary<int, RigidMap> { [main] = RigidMap.Identity };
        var order = new List<int> { main };
        var folds = new SortedSet<int>();
        for (var at = 0; at < order.Count; at++)
        {
            done[order[at]] = true;
            foreach (var arc in subdivision.Patches[order[at]].Arcs.Where(arc => subdivision.Arcs[arc].Role == EdgeRole.Fold))
            {
                folds.Add(arc);
                LayOver(subdivision, arc, order[at], maps, order);
            }
        }

        var (outline, holes) = PanelOutline.Walk(subdivision, maps, folds);
        Refuse(ExactPredicates.IsSimple(Rings.ToSteps(outline.Select(edge => edge.From))), subdivision, main, "would lie over itself");
        return new Panel([.. order], [.. order.Select(patch => maps[patch])], outline, [.. folds]) { Holes = holes };
    }

    private static void LayOver(Subdivision subdivision, int arc, int patch, Dictionary<int, RigidMap> maps, List<int> order)
    {
        var line = subdivision.Arcs[arc];
        var (here, there) = line.First.Patch == patch ? (line.First, line.Second!.Value) : (line.Second!.Value, line.First);
        var (from, to) = Ends(subdivision, here);
        var (onFrom, onTo) = (maps[patch].Apply(from), maps[patch].Apply(to));
        var (otherFrom, otherTo) = Ends(subdivision, there);
        if (maps.TryGetValue(there.Patch, out var known))
        {
            var gap = Math.Max(Point2.Distance(known.Apply(otherTo), onFrom), Point2.Distance(known.Apply(otherFrom), onTo));
            Refuse(gap <= Closure, subdivision, patch, "folds all round a hub");
            return;
        }

        maps.Add(there.Patch, RigidMap.Laying(otherTo, otherFrom, onFrom, onTo));
        order.Add(there.Patch);
    }

    private static (Point2 From, Point2 To) Ends(Subdivision subdivision, PatchSide side)
    {
        var corners = subdivision.Patches[side.Patch].Corners;
        return (corners[side.Edge], corners[(side.Edge + 1) % corners.Length]);
    }

    private static void Refuse(bool isRight, Subdivision subdivision, int patch, string why)
    {
        if (!isRight)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The panel of patch {patch} {why}; make one of its folds a seam."),
                nameof(subdivision));
        }
    }
}
