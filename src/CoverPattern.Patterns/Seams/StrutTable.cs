using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Frame and shell as the planning of panels sees them: struts by name, rows, the frame's turns.</summary>
/// <remarks>Nodes of the shell are the frame's hubs in their order, then others; its faces the frame's facets, then the skirt.</remarks>
internal sealed class StrutTable
{
    private readonly Dictionary<(int, int), int> edgeByHubs = [];
    private readonly Dictionary<string, int> hubByLabel;
    private readonly Dictionary<string, int> facetByLabel;

    internal StrutTable(Frame frame, Shell shell)
    {
        (Frame, Shell, Turns) = (frame, shell, FrameTurns.Find(frame));
        hubByLabel = frame.Hubs.Select((hub, i) => (hub.Label, i)).ToDictionary(pair => pair.Label, pair => pair.i, StringComparer.Ordinal);
        facetByLabel = frame.Facets.Select((facet, i) => (facet.Label, i)).ToDictionary(pair => pair.Label, pair => pair.i, StringComparer.Ordinal);
        foreach (var (edge, i) in shell.Edges.Select((edge, i) => (edge, i)).Where(pair => Math.Max(pair.edge.From, pair.edge.To) < frame.Hubs.Length))
        {
            edgeByHubs[Key(edge.From, edge.To)] = i;
        }
    }

    internal Frame Frame { get; }

    internal Shell Shell { get; }

    internal ImmutableArray<FrameTurn> Turns { get; }

    /// <summary>Rows of the frame, the highest first.</summary>
    internal IEnumerable<int> RowsFromTop => Frame.Facets.Select(facet => facet.Row).Distinct().OrderDescending();

    /// <summary>The edge over a strut named by its two hubs in either order; -1 when there is none.</summary>
    internal int EdgeNamed(string strut)
    {
        // Labels of a survey may hold dashes: every dash is tried as the one between two hubs.
        var ends = strut.Split('-', StringSplitOptions.TrimEntries);
        return Enumerable.Range(1, ends.Length - 1).Select(cut => hubByLabel.TryGetValue(string.Join('-', ends[..cut]), out var from) && hubByLabel.TryGetValue(string.Join('-', ends[cut..]), out var to)
            ? edgeByHubs.GetValueOrDefault(Key(from, to), -1)
            : -1).DefaultIfEmpty(-1).Max();
    }

    /// <summary>The facet of a label; -1 when there is none.</summary>
    internal int FacetNamed(string label) => facetByLabel.GetValueOrDefault(label, -1);

    /// <summary>The name of an edge's strut: its hubs, the lower one first.</summary>
    internal string NameOf(int edge)
    {
        var (from, to) = (Shell.Edges[edge].From, Shell.Edges[edge].To);
        return $"{Frame.Hubs[Math.Min(from, to)].Label}-{Frame.Hubs[Math.Max(from, to)].Label}";
    }

    internal string NamesOf(IEnumerable<int> edges) => string.Join(", ", edges.Select(NameOf).Order(StringComparer.Ordinal));

    /// <summary>The edge to which a turn of the frame brings an edge.</summary>
    internal int Turned(int edge, FrameTurn turn) => edgeByHubs[Key(turn.Hubs[Shell.Edges[edge].From], turn.Hubs[Shell.Edges[edge].To])];

    /// <summary>The edge and all to which the frame's turns bring it, rising.</summary>
    internal ImmutableArray<int> Orbit(int edge) => [.. Turns.Select(turn => Turned(edge, turn)).Distinct().Order()];

    /// <summary>Whether facets lie on both sides of an edge.</summary>
    internal bool IsInner(int edge) => Shell.Edges[edge].Right >= 0
        && Shell.Faces[Shell.Edges[edge].Left].Kind == FaceKind.Facet && Shell.Faces[Shell.Edges[edge].Right].Kind == FaceKind.Facet;

    /// <summary>Angle of a face at one of its nodes, radians; 0 when it does not touch it.</summary>
    internal double AngleAt(int face, int node)
    {
        var chart = Shell.Faces[face].Chart;
        var at = Shell.Faces[face].Nodes.IndexOf(node);
        if (at < 0)
        {
            return 0;
        }

        var (next, before) = (chart[(at + 1) % chart.Length] - chart[at], chart[(at + chart.Length - 1) % chart.Length] - chart[at]);
        return Math.Atan2(Point2.Cross(next, before), Point2.Dot(next, before));
    }

    /// <summary>A row as a closed ring; null when its facets do not close round the frame.</summary>
    internal BandRow? Row(int number)
    {
        int[] facets = [.. Enumerable.Range(0, Frame.Facets.Length).Where(i => Frame.Facets[i].Row == number)];
        int[] uprights = [.. facets.Select((facet, i) => SharedEdge(facet, facets[(i + 1) % facets.Length]))];
        return uprights.Contains(-1) ? null : new BandRow(number, [.. facets], [.. uprights]);
    }

    /// <summary>The upper hub of an edge.</summary>
    internal int UpperHub(int edge) => IsRising(edge) ? Shell.Edges[edge].To : Shell.Edges[edge].From;

    /// <summary>The lower hub of an edge.</summary>
    internal int LowerHub(int edge) => IsRising(edge) ? Shell.Edges[edge].From : Shell.Edges[edge].To;

    /// <summary>Angle of the middle of an edge from the front, 0 to 2 pi; a hair before the front counts as the front.</summary>
    internal double Bearing(int edge)
    {
        const double hair = 1e-9;
        var middle = Point3.Between(Frame.Hubs[Shell.Edges[edge].From].Position, Frame.Hubs[Shell.Edges[edge].To].Position, 0.5);
        var angle = Math.Atan2(middle.Y, middle.X);
        return angle < -hair ? angle + (2 * Math.PI) : Math.Max(angle, 0);
    }

    private bool IsRising(int edge) => Frame.Hubs[Shell.Edges[edge].From].Ring < Frame.Hubs[Shell.Edges[edge].To].Ring;

    private int SharedEdge(int facet, int other)
    {
        var shared = Shell.Faces[facet].Edges.Intersect(Shell.Faces[other].Edges).ToArray();
        return facet != other && shared.Length == 1 ? shared[0] : -1;
    }

    private static (int, int) Key(int from, int to) => (Math.Min(from, to), Math.Max(from, to));
}
