using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts a shell along its hem and round its openings, face by face in chart coordinates.</summary>
/// <remarks>
/// Height above the hem is linear on a plane face, so each edge is crossed at most once; the crossing is computed once an
/// edge, as a fraction of it, and both faces use that record. The same holds for crossings of rims.
/// </remarks>
public static class Subdivider
{
    /// <summary>Cuts the shell.</summary>
    /// <param name="shell">The finished surface, not yet clipped.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="regions">What is taken out of it; none by default.</param>
    /// <exception cref="ArgumentException">Regions lie over each other, or where nothing is left of the shell.</exception>
    public static Subdivision Cut(Shell shell, SeamPlan plan, ImmutableArray<Region> regions = default)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);

        var taken = regions.IsDefault ? [] : regions;
        var surface = new ClippedShell(shell);
        if (taken.SelectMany(region => region.Rim).FirstOrDefault(stretch => surface.Of(stretch.Face) is null) is { } lost)
        {
            throw new ArgumentException($"A region lies in face {shell.Faces[lost.Face].Label}, of which nothing is left.", nameof(regions));
        }

        var cells = FaceCutter.Cut(surface, taken, SeamCut.SharesOf(plan)) ?? throw new ArgumentException("Regions lie over each other.", nameof(regions));
        var labels = LineLabels.Of(shell, surface, plan, cells);
        var insides = taken.Select((_, i) => Assemble(shell, plan, taken, [.. cells.Where(cell => cell.Region == i)], labels));
        var cover = Assemble(shell, plan, taken, [.. cells.Where(cell => cell.Region < 0)], labels);
        return cover with { Panels = plan.Panels, Insides = [.. insides], Drawn = [.. taken.SelectMany(region => region.Drawn).SelectMany(mark => DrawnLine.On(cover.Patches, mark))] };
    }

    /// <summary>Makes patches of cells, and arcs of what they lie on.</summary>
    private static Subdivision Assemble(Shell shell, SeamPlan plan, ImmutableArray<Region> regions, ImmutableArray<FaceCell> cells, LineLabels labels)
    {
        var isUncut = cells.Any(cell => cell.Region >= 0 && !regions[cell.Region].IsSeamed);
        var lines = new Dictionary<CellEdge, (int Arc, List<PatchSide> Sides)>();
        foreach (var (side, edge) in SidesOf(cells).Where(entry => !entry.Edge.IsRim).Select(entry => (entry.Side, KeyOf(cells, entry))))
        {
            if (!lines.TryGetValue(edge, out var line))
            {
                lines.Add(edge, line = (lines.Count, []));
            }

            line.Sides.Add(side);
        }

        var arcs = lines.OrderBy(line => line.Value.Arc).Select(line => MakeArc(line.Key, line.Value.Sides)).ToList();
        var rims = new RimArcs(regions, cells, point => IsSeam(plan, point), arcs.Count);
        arcs.AddRange(rims.Arcs);
        return new Subdivision([.. cells.Select(PatchOf)], [.. arcs]);

        Patch PatchOf(FaceCell cell, int at) => new(cell.Face, cell.Corners, [.. cell.Edges.Select((edge, i) => edge.IsRim
            ? rims.ArcOf(edge)
            : lines[KeyOf(cells, (new PatchSide(at, i), edge))].Arc)])
        {
            Holes = [.. cell.Rings.Select(ring => new PatchHole(rims.ArcOf(CellEdge.OnRim(ring.Region, ring.Stretch, 0)), regions[ring.Region]))],
        };

        Arc MakeArc(CellEdge line, List<PatchSide> sides)
        {
            var (label, role, isEdge) = labels.Find(line);
            var wish = isEdge ? default : plan.Edges[line.Line];
            var (first, second) = (sides[0], sides.Count == 1 ? (PatchSide?)null : sides[1]);
            if (role == EdgeRole.Seam && second is { } other && cells[first.Patch].Face != wish.Over)
            {
                (first, second) = (other, first);
            }

            // What fills a region goes over every line uncut, unless it is made up along the cover's seams.
            var own = isUncut && role == EdgeRole.Seam ? EdgeRole.Fold : role;
            return new Arc(label, own, own == EdgeRole.Seam ? labels.CutAt(plan, line)?.MakeUp ?? wish.MakeUp : null, labels.LengthOf(line), first, second);
        }
    }

    /// <summary>The cut along the hem belongs to its face alone.</summary>
    private static CellEdge KeyOf(ImmutableArray<FaceCell> cells, (PatchSide Side, CellEdge Edge) entry) =>
        entry.Edge.Line >= 0 ? entry.Edge : entry.Edge with { Line = -1 - cells[entry.Side.Patch].Face };

    private static IEnumerable<(PatchSide Side, CellEdge Edge)> SidesOf(ImmutableArray<FaceCell> cells) =>
        cells.SelectMany((cell, patch) => cell.Edges.Select((edge, i) => (new PatchSide(patch, i), edge)));

    private static bool IsSeam(SeamPlan plan, LinePoint point) => point.Edge < 0 || plan.Edges[point.Edge].Role != EdgeRole.Fold;
}
