using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Cuts the faces of a shell along rims, by identity: who lies inside follows from where rims enter and leave, never from nearness.</summary>
/// <remarks>
/// What a rim takes out lies on its left. So round a face, counter-clockwise, a point where a rim enters is followed by the cover's
/// cloth up to the point where one leaves, and that by what is taken out. Faces that no rim enters are what the faces beside them
/// are at their common edge.
/// </remarks>
internal sealed class FaceCutter
{
    private readonly ClippedShell surface;
    private readonly ImmutableArray<Region> regions;
    private readonly Dictionary<(int Line, int Face), double[]> sharesOnLine;

    private readonly ImmutableDictionary<int, ImmutableArray<double>> cuts;

    private FaceCutter(ClippedShell surface, ImmutableArray<Region> regions, ImmutableDictionary<int, ImmutableArray<double>> cuts)
    {
        (this.surface, this.regions, this.cuts) = (surface, regions, cuts);
        sharesOnLine = regions.SelectMany(region => region.Rim).SelectMany(stretch => new[] { stretch.Enter, stretch.Leave }).OfType<LinePoint>()
            .Concat(cuts.SelectMany(line => line.Value.Select(share => new LinePoint(line.Key, -1, share))))
            .Distinct().GroupBy(point => (point.Edge, point.Face)).ToDictionary(group => group.Key, group => group.Select(point => point.Share).Order().ToArray());
    }

    /// <summary>All cells, in order of faces, of one face those of the cover first; null when rims cross or one region lies in another.</summary>
    /// <param name="surface">The shell above its hem.</param>
    /// <param name="regions">What is taken out.</param>
    /// <param name="cuts">Shares at which lines are parted though no rim crosses them, by the shell's edges; none by default.</param>
    internal static ImmutableArray<FaceCell>? Cut(ClippedShell surface, ImmutableArray<Region> regions, ImmutableDictionary<int, ImmutableArray<double>>? cuts = null)
    {
        var cutter = new FaceCutter(surface, regions, cuts ?? ImmutableDictionary<int, ImmutableArray<double>>.Empty);
        if (cutter.IsRingInRing())
        {
            return null;
        }

        var crossed = new Dictionary<int, ImmutableArray<FaceCell>>();
        foreach (var clip in surface.Faces)
        {
            if (cutter.CellsOf(clip) is not { } cells)
            {
                return null;
            }

            if (!cells.IsEmpty)
            {
                crossed.Add(clip.Face, cells);
            }
        }

        var inside = cutter.Swallowed(crossed);
        return inside is null
            ? null
            :
            [
                .. surface.Faces.SelectMany(clip => crossed.GetValueOrDefault(clip.Face) is { IsDefault: false } cells ? cells : [cutter.Whole(clip, inside.GetValueOrDefault(clip.Face, -1))]),
                .. cutter.InsideRings(),
            ];
    }

    /// <summary>The faces that no rim enters but that lie in a region, each with it; null when two regions claim one.</summary>
    private Dictionary<int, int>? Swallowed(Dictionary<int, ImmutableArray<FaceCell>> crossed)
    {
        var inside = new Dictionary<int, int>();
        var order = new Queue<(int Face, int Region)>(crossed.Values.SelectMany(cells => cells).Where(cell => cell.Region >= 0).SelectMany(Beside));
        while (order.TryDequeue(out var next))
        {
            if (crossed.ContainsKey(next.Face))
            {
                continue;
            }

            if (inside.TryAdd(next.Face, next.Region))
            {
                foreach (var beyond in surface.Of(next.Face)!.ShellEdges.Select(edge => surface.Beyond(next.Face, edge)).Where(face => face >= 0))
                {
                    order.Enqueue((beyond, next.Region));
                }
            }
            else if (inside[next.Face] != next.Region)
            {
                return null;
            }
        }

        // A ring inside a face that a region has swallowed lies in that region.
        return regions.Any(region => region.Rim[0].IsRing && inside.ContainsKey(region.Rim[0].Face)) ? null : inside;
    }

    private IEnumerable<(int Face, int Region)> Beside(FaceCell cell) => cell.Edges.Where(edge => !edge.IsRim)
        .Select(edge => (Face: surface.Beyond(cell.Face, edge.Line), cell.Region)).Where(entry => entry.Face >= 0);

    private FaceCell Whole(FaceClip clip, int region)
    {
        var (corners, edges) = (ImmutableArray.CreateBuilder<Point2>(), ImmutableArray.CreateBuilder<CellEdge>());
        for (var edge = 0; edge < clip.Corners.Length; edge++)
        {
            AddEdge(clip, edge, (0, double.PositiveInfinity), corners, edges);
        }

        return new FaceCell(clip.Face, region, corners.ToImmutable(), edges.ToImmutable())
        {
            Rings = region < 0 ? [.. RingsIn(clip.Face).Select(ring => (ring.Region, ring.Stretch))] : [],
        };
    }

    /// <summary>The parts of a face's edge between two distances from its first corner, each from where it begins.</summary>
    private void AddEdge(FaceClip clip, int edge, (double From, double To) between, ImmutableArray<Point2>.Builder corners, ImmutableArray<CellEdge>.Builder edges)
    {
        var along = (clip.After(edge) - clip.Corners[edge]).Unit();
        corners.Add(between.From == 0 ? clip.Corners[edge] : clip.Corners[edge] + (between.From * along));
        edges.Add(PartBehind(clip, edge, between.From));
        var line = clip.ShellEdges[edge];
        if (line < 0 || !cuts.TryGetValue(line, out var shares))
        {
            return;
        }

        var places = shares.Select(share => surface.Place(clip.Face, new LinePoint(line, -1, share))).Select(at => (On: Point2.Dot(at - clip.Corners[edge], along), At: at));
        var end = Math.Min(between.To, Point2.Distance(clip.Corners[edge], clip.After(edge)));
        foreach (var (on, at) in places.Where(place => place.On > between.From && place.On < end).OrderBy(place => place.On))
        {
            corners.Add(at);
            edges.Add(PartBehind(clip, edge, on));
        }
    }

    /// <summary>The cells of a face; none when no rim enters it, null when its rims contradict each other.</summary>
    private ImmutableArray<FaceCell>? CellsOf(FaceClip clip)
    {
        var gates = Gates(clip);
        for (var i = 0; i < gates.Length; i++)
        {
            var (here, next) = (gates[i], gates[(i + 1) % gates.Length]);
            if (here.Enters == next.Enters || (!here.Enters && here.Region != next.Region))
            {
                return null;
            }
        }

        ImmutableArray<FaceCell> cells = [.. Walks(clip, gates, isCloth: true), .. Walks(clip, gates, isCloth: false)];
        return AddRings(clip, cells);
    }

    /// <summary>Rings go into the cell of the cover that holds them.</summary>
    private ImmutableArray<FaceCell>? AddRings(FaceClip clip, ImmutableArray<FaceCell> cells)
    {
        if (cells.IsEmpty)
        {
            return cells;
        }

        var all = cells.ToBuilder();
        foreach (var (region, stretch, point) in RingsIn(clip.Face))
        {
            var at = Enumerable.Range(0, all.Count).Where(i => Holds(all[i], point)).DefaultIfEmpty(-1).First();
            if (at < 0 || all[at].Region >= 0)
            {
                return null;
            }

            all[at] = all[at] with { Rings = all[at].Rings.Add((region, stretch)) };
        }

        return all.ToImmutable();
    }

    /// <summary>What is taken out of a face by a rim that stays inside it.</summary>
    private IEnumerable<FaceCell> InsideRings() => regions.SelectMany((region, i) => region.Rim.Select((stretch, k) => (stretch, k)).Where(entry => entry.stretch.IsRing)
        .Select(entry => new FaceCell(entry.stretch.Face, i, entry.stretch.Points, [.. entry.stretch.Points.Select(_ => CellEdge.OnRim(i, entry.k, 0))])));

    private bool IsRingInRing()
    {
        FaceCell[] rings = [.. InsideRings()];
        return rings.Any(outer => rings.Any(inner => inner.Face == outer.Face && inner.Region != outer.Region && Holds(outer, inner.Corners[0])));
    }

    private static bool Holds(FaceCell cell, Point2 point) => ExactPredicates.Locate(Rings.ToSteps(cell.Corners), Grid.ToSteps(point)) > 0;

    private IEnumerable<(int Region, int Stretch, Point2 Point)> RingsIn(int face) => regions.SelectMany((region, i) => region.Rim
        .Select((stretch, k) => (Region: i, Stretch: k, stretch)).Where(entry => entry.stretch.IsRing && entry.stretch.Face == face)
        .Select(entry => (entry.Region, entry.Stretch, entry.stretch.Points[0])));

    /// <summary>Where rims enter and leave a face, counter-clockwise round it.</summary>
    private Gate[] Gates(FaceClip clip)
    {
        var gates = new List<Gate>();
        foreach (var (region, i) in regions.Select((region, i) => (region, i)))
        {
            foreach (var (stretch, k) in region.Rim.Select((stretch, k) => (stretch, k)).Where(entry => entry.stretch.Face == clip.Face && !entry.stretch.IsRing))
            {
                gates.Add(GateAt(clip, stretch.Enter!.Value, (i, k), enters: true));
                gates.Add(GateAt(clip, stretch.Leave!.Value, (i, k), enters: false));
            }
        }

        return [.. gates.OrderBy(gate => gate.Edge).ThenBy(gate => gate.On)];
    }

    private Gate GateAt(FaceClip clip, LinePoint point, (int Region, int Stretch) of, bool enters)
    {
        var edge = clip.ShellEdges.IndexOf(point.Edge);
        var at = surface.Place(clip.Face, point);
        return new Gate(edge, Point2.Distance(clip.Corners[edge], at), at, of.Region, of.Stretch, enters);
    }

    /// <summary>Cells of the cover, or of what is taken out.</summary>
    private IEnumerable<FaceCell> Walks(FaceClip clip, Gate[] gates, bool isCloth)
    {
        var done = new bool[gates.Length];
        for (var start = 0; start < gates.Length; start++)
        {
            if (gates[start].Enters == isCloth && !done[start])
            {
                yield return Walk(clip, gates, start, done);
            }
        }
    }

    /// <summary>
    /// Along the border from a gate to the next, along the rim there to its other end, and so on: cloth lies between a gate where a rim
    /// enters and one where one leaves, and goes back along the rim; what is taken out lies between leaving and entering, and goes forward.
    /// </summary>
    private FaceCell Walk(FaceClip clip, Gate[] gates, int start, bool[] done)
    {
        var corners = ImmutableArray.CreateBuilder<Point2>();
        var edges = ImmutableArray.CreateBuilder<CellEdge>();
        var isCloth = gates[start].Enters;
        for (var at = start; !done[at];)
        {
            done[at] = true;
            AlongBorder(clip, gates[at], gates[(at + 1) % gates.Length], corners, edges);
            var gate = gates[(at + 1) % gates.Length];
            var rim = regions[gate.Region].Rim[gate.Stretch];
            for (var step = 0; step < rim.Points.Length - 1; step++)
            {
                // Backward a step begins where it would end.
                var begin = isCloth ? rim.Points.Length - 2 - step : step;
                corners.Add(rim.Points[isCloth ? begin + 1 : begin]);
                edges.Add(CellEdge.OnRim(gate.Region, gate.Stretch, rim.PartOf(begin)));
            }

            at = Array.FindIndex(gates, other => other.Region == gate.Region && other.Stretch == gate.Stretch && other.Enters == isCloth);
        }

        return new FaceCell(clip.Face, isCloth ? -1 : gates[start].Region, corners.ToImmutable(), edges.ToImmutable());
    }

    private void AlongBorder(FaceClip clip, Gate from, Gate to, ImmutableArray<Point2>.Builder corners, ImmutableArray<CellEdge>.Builder edges)
    {
        var first = corners.Count;
        var isOneEdge = from.Edge == to.Edge && to.On > from.On;
        AddEdge(clip, from.Edge, (from.On, isOneEdge ? to.On : double.PositiveInfinity), corners, edges);
        corners[first] = from.At;
        for (var edge = from.Edge; !isOneEdge;)
        {
            edge = (edge + 1) % clip.Corners.Length;
            isOneEdge = edge == to.Edge;
            AddEdge(clip, edge, (0, isOneEdge ? to.On : double.PositiveInfinity), corners, edges);
        }
    }

    /// <summary>The part of a clipped face's edge that begins at a distance from its first corner.</summary>
    private CellEdge PartBehind(FaceClip clip, int edge, double on)
    {
        var line = clip.ShellEdges[edge];
        if (!sharesOnLine.TryGetValue((line, line < 0 ? clip.Face : -1), out var shares))
        {
            return CellEdge.OnLine(line, 0);
        }

        // A tenth of the least piece is far from both ends of the part: which part it is, is no question of rounding.
        var (from, step) = line < 0
            ? (clip.Corners[edge], clip.After(edge) - clip.Corners[edge])
            : (surface.Ends(clip.Face, line).From, surface.Ends(clip.Face, line).To - surface.Ends(clip.Face, line).From);
        var along = (clip.After(edge) - clip.Corners[edge]).Unit();
        var share = Point2.Dot(clip.Corners[edge] + ((on + 0.1) * along) - from, step) / Point2.Dot(step, step);
        return CellEdge.OnLine(line, shares.Count(other => other < share));
    }

    /// <summary>Where a rim enters or leaves a face.</summary>
    /// <param name="Edge">Index of the clipped face's edge.</param>
    /// <param name="On">Distance from that edge's first corner, millimetres.</param>
    /// <param name="At">The place.</param>
    /// <param name="Region">Index of the region.</param>
    /// <param name="Stretch">Index of its stretch.</param>
    /// <param name="Enters">Whether the rim enters here.</param>
    private sealed record Gate(int Edge, double On, Point2 At, int Region, int Stretch, bool Enters);
}
