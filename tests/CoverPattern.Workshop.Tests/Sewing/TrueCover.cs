using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The cover as a polyhedron in space, from closed forms: what the sewn pieces have to become.</summary>
/// <remarks>
/// Rules of the cut, promised to the shop and so part of the truth (docs/checks.md): a hub within 1 mm of the finished edge counts
/// as on it, and over heights of the model the whole edge runs through the lowest such hub; a chord whose ends are less than 2 mm above it gets no skirt; what is left of a face narrower than
/// 1 mm is dropped. A skirt over measured heights has no place in space: it stands here on its chord, as a stiff strip.
/// </remarks>
internal sealed class TrueCover
{
    private const double LeastSkirt = 2;
    private const double LeastWidth = 1;

    private readonly CoverSizes sizes;
    private readonly List<SpacePoint> nodes = [];
    private readonly List<SpacePoint> hubs = [];
    private readonly List<double> heights = [];
    private readonly List<Outline> outlines = [];
    private TrueBase? below;

    private TrueCover(CoverSizes sizes) => this.sizes = sizes;

    internal Dictionary<string, TrueFace> Faces { get; } = new(StringComparer.Ordinal);

    /// <summary>Where the cover has its corner over a hub; behind the hubs come the feet below them.</summary>
    internal SpacePoint Over(int node) => (1 + sizes.Ease) * nodes[node];

    internal static TrueCover Build(CoverSizes sizes)
    {
        var cover = new TrueCover(sizes);
        var frame = sizes.Mesh;
        cover.PlaceNodes(frame);
        cover.OutlineFaces(frame);
        cover.Clip();
        return cover;
    }

    /// <summary>A node for every hub, then one straight below every hub at the finished edge.</summary>
    private void PlaceNodes(TrueMesh frame)
    {
        var normals = frame.Hubs.Select(_ => new List<SpacePoint>()).ToArray();
        foreach (var facet in frame.Facets)
        {
            var corners = facet.Hubs.Select(hub => frame.Hubs[hub]).ToArray();
            var normal = (corners[1] - corners[0]).Cross(corners[2] - corners[0]).Unit;
            Array.ForEach(facet.Hubs, hub => normals[hub].Add(normal));
        }

        foreach (var (hub, i) in frame.Hubs.Select((hub, i) => (hub, i)))
        {
            hubs.Add(hub);
            nodes.Add(hubs[i] + TrueHubs.StepOf(normals[i], sizes.StandOff));
        }

        below = new TrueBase(sizes, frame, hubs, [.. nodes]);
        heights.AddRange(below.Heights.Select(height => Math.Abs(height) < TrueBase.OnEdge ? 0 : height));
        nodes.AddRange(Feet(frame));
        heights.AddRange(heights.Select(_ => 0.0).ToArray());
    }

    /// <summary>One for every hub; those above the base have none and keep their place.</summary>
    private SpacePoint[] Feet(TrueMesh frame)
    {
        var feet = nodes.ToArray();
        SpacePoint Normal(int[] ring) => (nodes[ring[1]] - nodes[ring[0]]).Cross(nodes[ring[2]] - nodes[ring[0]]).Unit;
        foreach (var (facet, hub, _) in frame.BaseEdges)
        {
            var before = frame.BaseEdges.Single(edge => edge.To == hub).Facet;
            feet[hub] = below!.FootOf(hub, Normal(frame.Facets[before].Hubs), Normal(frame.Facets[facet].Hubs));
        }

        return feet;
    }

    /// <summary>Corners of the strip below a chord, set on the chord in its vertical plane, by their node.</summary>
    private Dictionary<int, SpacePoint> Strip(int from, int to)
    {
        var count = nodes.Count / 2;
        var chord = nodes[to] - nodes[from];
        double Lift(int hub) => below!.Lift[below.Hubs.ToList().IndexOf(hub)];
        var rise = chord.Z + Lift(to) - Lift(from);
        var plan = Math.Sqrt(chord.Dot(chord) - (rise * rise));
        var along = chord.Unit;
        var up = (new SpacePoint(0, 0, 1) - (along.Z * along)).Unit;
        var (level, plumb) = ((plan / chord.Length, -rise / chord.Length), (rise / chord.Length, plan / chord.Length));
        SpacePoint Step((double Along, double Up) way) => (way.Along * along) + (way.Up * up);
        return new Dictionary<int, SpacePoint>
        {
            [from] = nodes[from],
            [to] = nodes[from] + (plan * Step(level)) + (rise * Step(plumb)),
            [from + count] = nodes[from] - (heights[from] * Step(plumb)),
            [to + count] = nodes[from] + (plan * Step(level)) + ((rise - heights[to]) * Step(plumb)),
        };
    }

    private void OutlineFaces(TrueMesh frame)
    {
        foreach (var (label, _, ring, stands) in frame.Facets)
        {
            outlines.Add(new Outline(label, ring, stands ? (ring[0], ring[1]) : (ring[1], ring[0])));
        }

        var hung = new Dictionary<int, int>();
        foreach (var (facet, from, to) in frame.BaseEdges.Where(edge => Math.Max(heights[edge.From], heights[edge.To]) >= LeastSkirt))
        {
            int FootOf(int hub) => heights[hub] > 0 ? hub + frame.Hubs.Count : hub;
            var number = hung[facet] = hung.GetValueOrDefault(facet) + 1;
            outlines.Add(new Outline(frame.Facets[facet].Label + (number > 1 ? $"-{number}k" : "k"), [.. new[] { FootOf(from), FootOf(to), to, from }.Distinct()], (from, to))
            {
                Own = sizes.Base.IsStrip ? Strip(from, to) : [],
            });
        }
    }

    private void Clip()
    {
        var kept = outlines.Select(outline => (Outline: outline, Cut: Clip(outline))).Where(face => Width(face.Cut) >= LeastWidth).ToArray();
        var beside = kept.SelectMany(face => face.Cut.Where(corner => corner.Edge is not null).Select(corner => (corner.Edge, face.Outline.Label)))
            .ToLookup(entry => entry.Edge!.Value, entry => entry.Label);
        foreach (var (outline, cut) in kept)
        {
            TrueEdge EdgeOf((int, int)? edge)
            {
                var other = edge is null ? null : beside[edge.Value].SingleOrDefault(label => label != outline.Label);
                return other is null ? new("hem", null) : new(other.EndsWith('k') == outline.Label.EndsWith('k') ? "seam" : "fold", other);
            }

            var corners = outline.Ring.Select(node => Place(outline, node)).ToArray();
            Faces.Add(outline.Label, new TrueFace(
                outline.Label,
                [.. cut.Select(corner => corner.At)],
                [.. cut.Select((corner, i) => EdgeOf(corner.Edge) with { FromHub = IsHub(corner.Node), ToHub = IsHub(cut[(i + 1) % cut.Count].Node) })],
                (corners[1] - corners[0]).Cross(corners[^1] - corners[0]).Unit,
                (Place(outline, outline.RingEdge.To) - Place(outline, outline.RingEdge.From)).Unit,
                ((1 + sizes.Ease) / corners.Length) * outline.Ring.Select(node => nodes[node]).Aggregate((sum, corner) => sum + corner))
            {
                Uncut = corners,
            });
        }
    }

    /// <summary>The first half of the nodes are hubs, the second their feet; a point where the finished edge cuts a line is neither.</summary>
    private bool IsHub(int node) => node >= 0 && node < nodes.Count / 2;

    private SpacePoint Place(Outline outline, int node) => (1 + sizes.Ease) * outline.Own.GetValueOrDefault(node, nodes[node]);

    /// <summary>Corners above the finished edge, each with the uncut edge that leaves it (null along the finished edge).</summary>
    private List<(SpacePoint At, (int, int)? Edge, int Node)> Clip(Outline outline)
    {
        var cut = new List<(SpacePoint, (int, int)?, int)>();
        for (var i = 0; i < outline.Ring.Length; i++)
        {
            var (here, there) = (outline.Ring[i], outline.Ring[(i + 1) % outline.Ring.Length]);
            var edge = (Math.Min(here, there), Math.Max(here, there));
            var (above, next) = (heights[here], heights[there]);
            if (above >= 0)
            {
                cut.Add((Place(outline, here), above == 0 && next < 0 ? null : edge, here));
            }

            if (above * next < 0)
            {
                cut.Add((Place(outline, here) + ((above / (above - next)) * (Place(outline, there) - Place(outline, here))), next > 0 ? edge : null, -1));
            }
        }

        return cut;
    }

    private static double Width(List<(SpacePoint At, (int, int)? Edge, int Node)> cut)
    {
        if (cut.Count < 3)
        {
            return 0;
        }

        var corners = cut.Select(corner => corner.At).ToArray();
        var area = new TrueFace(string.Empty, corners, [], default, default, default).Area;
        return 2 * area / corners.Select((corner, i) => corner.DistanceTo(corners[(i + 1) % corners.Length])).Max();
    }

    private sealed record Outline(string Label, int[] Ring, (int From, int To) RingEdge)
    {
        /// <summary>Corners that lie elsewhere than their nodes.</summary>
        internal Dictionary<int, SpacePoint> Own { get; init; } = [];
    }
}
