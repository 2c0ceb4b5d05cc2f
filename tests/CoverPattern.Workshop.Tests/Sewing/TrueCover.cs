using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The cover as a polyhedron in space, from closed forms: what the sewn pieces have to become.</summary>
/// <remarks>
/// Rules of the cut, promised to the shop and so part of the truth (docs/checks.md): a hub within 1 mm of the finished
/// edge counts as on it; a chord whose ends are less than 2 mm above it gets no skirt; what is left of a face narrower than
/// 1 mm is dropped.
/// </remarks>
internal sealed class TrueCover
{
    private const double OnEdge = 1;
    private const double LeastSkirt = 2;
    private const double LeastWidth = 1;
    private const double SameBearing = 1e-9;

    private readonly CoverSizes sizes;
    private readonly List<SpacePoint> nodes = [];
    private readonly List<double> heights = [];
    private readonly List<Outline> outlines = [];

    private TrueCover(CoverSizes sizes) => this.sizes = sizes;

    internal Dictionary<string, TrueFace> Faces { get; } = new(StringComparer.Ordinal);

    internal static TrueCover Build(CoverSizes sizes)
    {
        var cover = new TrueCover(sizes);
        var frame = new TrueFrame(sizes.Frequency, sizes.Rows);
        cover.PlaceNodes(frame);
        cover.OutlineFaces(frame);
        cover.Clip();
        return cover;
    }

    /// <summary>A node for every hub, then one straight below every hub at the finished edge.</summary>
    private void PlaceNodes(TrueFrame frame)
    {
        var deck = frame.Hubs.Min(hub => hub.Z);
        var normals = frame.Hubs.Select(_ => new List<SpacePoint>()).ToArray();
        foreach (var facet in frame.Facets)
        {
            var corners = facet.Hubs.Select(hub => frame.Hubs[hub]).ToArray();
            var normal = (corners[1] - corners[0]).Cross(corners[2] - corners[0]).Unit;
            Array.ForEach(facet.Hubs, hub => normals[hub].Add(normal));
        }

        foreach (var (hub, i) in frame.Hubs.Select((hub, i) => (hub, i)))
        {
            nodes.Add((sizes.Radius * (hub - new SpacePoint(0, 0, deck))) + TrueHubs.StepOf(normals[i], sizes.StandOff));
        }

        heights.AddRange(nodes.Select(node => Math.Abs(node.Z + sizes.Drop) < OnEdge ? 0 : node.Z + sizes.Drop));
        nodes.AddRange(nodes.Select(node => node with { Z = -sizes.Drop }).ToArray());
        heights.AddRange(heights.Select(_ => 0.0).ToArray());
    }

    private void OutlineFaces(TrueFrame frame)
    {
        foreach (var (label, facet) in Labelled(frame))
        {
            var (from, to) = (facet.Hubs[0], facet.Hubs[1]);
            outlines.Add(new Outline(label, facet.Hubs, facet.Stands ? (from, to) : (to, from)));
            if (facet.RowFromTop == sizes.Rows && facet.Stands && Math.Max(heights[from], heights[to]) >= LeastSkirt)
            {
                int FootOf(int hub) => heights[hub] > 0 ? hub + frame.Hubs.Count : hub;
                outlines.Add(new Outline(label + "k", [.. new[] { FootOf(from), FootOf(to), to, from }.Distinct()], (from, to)));
            }
        }
    }

    private static IEnumerable<(string Label, (int RowFromTop, int[] Hubs, bool Stands) Facet)> Labelled(TrueFrame frame)
    {
        var rows = frame.Facets.Max(facet => facet.RowFromTop);
        var longest = frame.Facets.GroupBy(facet => facet.RowFromTop).Max(row => row.Count());
        string Padded(int number, int largest) =>
            number.ToString(CultureInfo.InvariantCulture).PadLeft(largest.ToString(CultureInfo.InvariantCulture).Length, '0');
        foreach (var row in frame.Facets.GroupBy(facet => rows + 1 - facet.RowFromTop))
        {
            foreach (var (facet, i) in row.OrderBy(facet => Bearing(facet.Hubs.Select(hub => frame.Hubs[hub]))).Select((facet, i) => (facet, i)))
            {
                yield return ("F" + Padded(row.Key, rows) + "." + Padded(i + 1, longest), facet);
            }
        }
    }

    /// <summary>Of the corners' centre, counter-clockwise from +x seen from above.</summary>
    private static double Bearing(IEnumerable<SpacePoint> corners)
    {
        var centre = corners.Aggregate((sum, corner) => sum + corner);
        var angle = Math.Atan2(centre.Y, centre.X);
        return angle < -SameBearing ? angle + (2 * Math.PI) : angle;
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

            var corners = outline.Ring.Select(Place).ToArray();
            Faces.Add(outline.Label, new TrueFace(
                outline.Label,
                [.. cut.Select(corner => corner.At)],
                [.. cut.Select(corner => EdgeOf(corner.Edge))],
                (corners[1] - corners[0]).Cross(corners[^1] - corners[0]).Unit,
                (Place(outline.RingEdge.To) - Place(outline.RingEdge.From)).Unit,
                (1.0 / corners.Length) * corners.Aggregate((sum, corner) => sum + corner)));
        }
    }

    private SpacePoint Place(int node) => (1 + sizes.Ease) * nodes[node];

    /// <summary>Corners above the finished edge, each with the uncut edge that leaves it (null along the finished edge).</summary>
    private List<(SpacePoint At, (int, int)? Edge)> Clip(Outline outline)
    {
        var cut = new List<(SpacePoint, (int, int)?)>();
        for (var i = 0; i < outline.Ring.Length; i++)
        {
            var (here, there) = (outline.Ring[i], outline.Ring[(i + 1) % outline.Ring.Length]);
            var edge = (Math.Min(here, there), Math.Max(here, there));
            var (above, next) = (heights[here], heights[there]);
            if (above >= 0)
            {
                cut.Add((Place(here), above == 0 && next < 0 ? null : edge));
            }

            if (above * next < 0)
            {
                cut.Add((Place(here) + ((above / (above - next)) * (Place(there) - Place(here))), next > 0 ? edge : null));
            }
        }

        return cut;
    }

    private static double Width(List<(SpacePoint At, (int, int)? Edge)> cut)
    {
        if (cut.Count < 3)
        {
            return 0;
        }

        var corners = cut.Select(corner => corner.At).ToArray();
        var area = new TrueFace(string.Empty, corners, [], default, default, default).Area;
        return 2 * area / corners.Select((corner, i) => corner.DistanceTo(corners[(i + 1) % corners.Length])).Max();
    }

    private sealed record Outline(string Label, int[] Ring, (int From, int To) RingEdge);
}
