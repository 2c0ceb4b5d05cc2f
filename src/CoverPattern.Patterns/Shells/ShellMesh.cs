using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>A shell while it is being put together.</summary>
internal sealed class ShellMesh
{
    private readonly double scale;
    private readonly List<ShellNode> nodes = [];
    private readonly List<(string Label, FaceKind Kind, ImmutableArray<int> Nodes, ImmutableArray<int> Edges, ImmutableArray<Point2> Strip)> faces = [];
    private readonly List<(int From, int To, int Left, int Right)> edges = [];
    private readonly Dictionary<(int, int), int> edgeByNodes = [];
    private readonly Dictionary<int, int> footByNode = [];
    private readonly Dictionary<int, int> hubByFoot = [];

    /// <param name="scale">1 + ease: what every length is multiplied by at the end.</param>
    internal ShellMesh(double scale) => this.scale = scale;

    /// <summary>Height of a node above the finished edge, before ease.</summary>
    internal double Height(int node) => nodes[node].AboveHem;

    internal void AddNode(string label, Point3 position, double aboveHem, int? ring) => nodes.Add(new ShellNode(label, position, aboveHem) { Ring = ring });

    /// <summary>Where a node lies, before ease.</summary>
    internal Point3 Position(int node) => nodes[node].Position;

    /// <summary>Outward, square to a face, length 1.</summary>
    internal Point3 Normal(int face)
    {
        Point3 At(int corner) => nodes[faces[face].Nodes[corner]].Position;
        return Point3.Cross(At(1) - At(0), At(2) - At(0)).Unit();
    }

    /// <summary>The node below another on the finished edge; made once.</summary>
    internal int Foot(int node, Point3 position)
    {
        if (!footByNode.TryGetValue(node, out var foot))
        {
            foot = nodes.Count;
            footByNode.Add(node, foot);
            hubByFoot.Add(foot, node);
            AddNode(nodes[node].Label + "f", position, 0, ring: null);
        }

        return foot;
    }

    /// <summary>The hub that a foot belongs to; a hub itself otherwise.</summary>
    internal int HubOver(int node) => hubByFoot.GetValueOrDefault(node, node);

    /// <summary>Adds a plane face.</summary>
    /// <param name="label">Its label.</param>
    /// <param name="kind">What it covers.</param>
    /// <param name="ring">Its nodes, counter-clockwise seen from outside.</param>
    /// <param name="strip">Its corners in any plane coordinates before ease, where the nodes' places do not give its shape; else empty.</param>
    internal void AddFace(string label, FaceKind kind, ImmutableArray<int> ring, ImmutableArray<Point2> strip)
    {
        var index = faces.Count;
        faces.Add((label, kind, ring, [.. ring.Select((node, i) => EdgeOf(node, ring[(i + 1) % ring.Length], index))], strip));
    }

    /// <summary>The edges that only one face uses so far, as that face runs along them.</summary>
    internal ImmutableArray<BorderChord> BorderChords() =>
        [.. edges.Where(edge => edge.Right < 0).Select(edge => new BorderChord(edge.From, edge.To, edge.Left))];

    /// <summary>Edges over which cloth goes uncut though both faces are facets; the lower node first.</summary>
    internal ImmutableHashSet<(int, int)> Folds { get; init; } = [];

    internal Shell Finish(double standOff, double ease) => new(
        [.. nodes.Select(node => node with { Position = scale * node.Position, AboveHem = scale * node.AboveHem })],
        [.. edges.Select(edge => new ShellEdge(edge.From, edge.To, scale * Length(edge), edge.Left, edge.Right)
        {
            IsFold = Folds.Contains((Math.Min(edge.From, edge.To), Math.Max(edge.From, edge.To))),
        })],
        [.. faces.Select(face => new ShellFace(face.Label, face.Kind, face.Nodes, face.Edges, face.Strip.IsEmpty ? Chart(face.Nodes) : Chart(face.Strip)))],
        standOff,
        ease);

    private int EdgeOf(int from, int to, int face)
    {
        var key = (Math.Min(from, to), Math.Max(from, to));
        if (!edgeByNodes.TryGetValue(key, out var index))
        {
            edgeByNodes.Add(key, edges.Count);
            edges.Add((from, to, face, -1));
            return edges.Count - 1;
        }

        var edge = edges[index];
        if (edge.Right >= 0 || edge.From == from)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The edge {nodes[from].Label} - {nodes[to].Label} has a third face or two that run the same way."),
                nameof(face));
        }

        edges[index] = edge with { Right = face };
        return index;
    }

    /// <summary>Length before ease; the lower edge of a strip is as long as the strip has it, all other edges as their nodes lie.</summary>
    private double Length((int From, int To, int Left, int Right) edge)
    {
        var (_, _, ring, _, strip) = faces[edge.Left];
        return edge.Right >= 0 || strip.IsEmpty
            ? Point3.Distance(nodes[edge.From].Position, nodes[edge.To].Position)
            : Point2.Distance(strip[ring.IndexOf(edge.From)], strip[ring.IndexOf(edge.To)]);
    }

    /// <summary>The corners of a plane face in its own plane, first edge on +x.</summary>
    private ImmutableArray<Point2> Chart(ImmutableArray<int> ring)
    {
        var corners = ring.Select(node => scale * nodes[node].Position).ToArray();
        var along = (corners[1] - corners[0]).Unit();
        var normal = Point3.Cross(along, corners[^1] - corners[0]).Unit();
        var across = Point3.Cross(normal, along);
        return [.. corners.Select(corner => new Point2(Point3.Dot(corner - corners[0], along), Point3.Dot(corner - corners[0], across)))];
    }

    /// <summary>The same for a strip that has plane coordinates already.</summary>
    private ImmutableArray<Point2> Chart(ImmutableArray<Point2> strip)
    {
        var along = (strip[1] - strip[0]).Unit();
        return [.. strip.Select(corner => scale * new Point2(Point2.Dot(corner - strip[0], along), Point2.Cross(along, corner - strip[0])))];
    }
}

/// <summary>An edge at the border of the mesh.</summary>
/// <param name="From">Node where its face begins to run along it.</param>
/// <param name="To">The other node.</param>
/// <param name="Face">The one face.</param>
internal readonly record struct BorderChord(int From, int To, int Face);
