using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>The arcs of rims: a rim goes on over folds as one arc, and ends where it meets a seam or the hem.</summary>
/// <remarks>So every arc lies on one panel from end to end, and what fills the opening is joined to the cover arc by arc.</remarks>
internal sealed class RimArcs
{
    private readonly Dictionary<(int Region, RimPart Part), int> arcs = [];

    /// <param name="regions">All regions.</param>
    /// <param name="cells">The cells on one side of the rims: the cover's, or those of one region.</param>
    /// <param name="isEnd">Whether a rim's arc ends where it crosses a line.</param>
    /// <param name="first">Index of the first arc.</param>
    internal RimArcs(ImmutableArray<Region> regions, ImmutableArray<FaceCell> cells, Func<LinePoint, bool> isEnd, int first)
    {
        var sides = SidesOf(cells);

        // The cover runs along a rim backward: there its last stretch comes first.
        var isBackward = cells.Any(cell => cell.Region < 0);
        var made = ImmutableArray.CreateBuilder<Arc>();
        foreach (var (region, i) in regions.Select((region, i) => (region, i)))
        {
            var groups = Groups(region, isEnd).Where(group => group.Exists(part => sides.ContainsKey((i, part)))).ToArray();
            foreach (var (group, number) in groups.Select((group, number) => (group, number)))
            {
                group.ForEach(part => arcs.Add((i, part), first + made.Count));
                var label = groups.Length == 1 ? region.Label : string.Create(CultureInfo.InvariantCulture, $"{region.Label}-{number + 1}");
                var length = groups.Length == 1 ? region.RimLength : group.Sum(part => region.Rim[part.Stretch].LengthOf(part.Part));
                made.Add(new Arc(label, EdgeRole.Rim, null, length, sides[(i, isBackward ? group[^1] : group[0])], Second: null) { Region = region, FromMm = WayTo(region, group[0]) });
            }
        }

        Arcs = made.ToImmutable();
    }

    internal ImmutableArray<Arc> Arcs { get; }

    /// <summary>Index of the arc of a rim's edge.</summary>
    internal int ArcOf(CellEdge edge) => arcs[(edge.Region, new RimPart(edge.Stretch, edge.Part))];

    /// <summary>Length of the rim before a part of it, millimetres.</summary>
    private static double WayTo(Region region, RimPart part) =>
        region.Rim.Take(part.Stretch).Sum(stretch => stretch.Length) + Enumerable.Range(0, part.Part).Sum(region.Rim[part.Stretch].LengthOf);

    /// <summary>For each part of a stretch the first edge of a patch that lies on it; the side of a ring has the number after the last corner's.</summary>
    private static Dictionary<(int Region, RimPart Part), PatchSide> SidesOf(ImmutableArray<FaceCell> cells)
    {
        var sides = new Dictionary<(int Region, RimPart Part), PatchSide>();
        foreach (var (cell, patch) in cells.Select((cell, patch) => (cell, patch)))
        {
            foreach (var (edge, i) in cell.Edges.Select((edge, i) => (edge, i)).Where(entry => entry.edge.IsRim))
            {
                sides.TryAdd((edge.Region, new RimPart(edge.Stretch, edge.Part)), new PatchSide(patch, i));
            }

            foreach (var (ring, i) in cell.Rings.Select((ring, i) => (ring, i)))
            {
                sides.Add((ring.Region, new RimPart(ring.Stretch, 0)), new PatchSide(patch, cell.Corners.Length + i));
            }
        }

        return sides;
    }

    /// <summary>Parts in order of the rim, those of one arc together; the first begins where an arc begins.</summary>
    internal static List<List<RimPart>> Groups(Region region, Func<LinePoint, bool> isEnd)
    {
        RimPart[] parts = [.. region.Rim.SelectMany((stretch, i) => Enumerable.Range(0, 1 + stretch.Breaks.Count(at => at > 0)).Select(part => new RimPart(i, part)))];
        bool Begins(RimPart part) => part.Part > 0 || region.Rim[part.Stretch].Breaks.Contains(0) || (region.Rim[part.Stretch].Enter is { } enter && isEnd(enter));
        var start = Enumerable.Range(0, parts.Length).Where(i => Begins(parts[i])).DefaultIfEmpty(0).First();
        var groups = new List<List<RimPart>>();
        foreach (var part in Enumerable.Range(0, parts.Length).Select(i => parts[(start + i) % parts.Length]))
        {
            if (groups.Count == 0 || Begins(part))
            {
                groups.Add([]);
            }

            groups[^1].Add(part);
        }

        return groups;
    }

    /// <summary>A part of a stretch between breaks.</summary>
    internal readonly record struct RimPart(int Stretch, int Part);
}
