using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>A shell above its hem, as one who walks on it sees it.</summary>
internal sealed class ClippedShell
{
    private readonly ImmutableArray<FaceClip?> byFace;

    internal ClippedShell(Shell shell)
    {
        Shell = shell;
        Faces = FaceClip.Kept(shell);
        var clips = Faces.ToDictionary(clip => clip.Face);
        byFace = [.. shell.Faces.Select((_, face) => clips.TryGetValue(face, out var clip) ? clip : null)];
    }

    internal Shell Shell { get; }

    /// <summary>What is left of the faces, in their order.</summary>
    internal ImmutableArray<FaceClip> Faces { get; }

    /// <summary>What is left of a face; null where nothing is.</summary>
    internal FaceClip? Of(int face) => face < 0 ? null : byFace[face];

    /// <summary>The face beyond an edge of another; -1 where the cover ends.</summary>
    internal int Beyond(int face, int edge)
    {
        if (edge < 0)
        {
            return -1;
        }

        var line = Shell.Edges[edge];
        var other = line.Left == face ? line.Right : line.Left;
        return Of(other) is null ? -1 : other;
    }

    /// <summary>Where a whole edge of the shell begins and ends in a face's chart, from its first node to its last.</summary>
    internal (Point2 From, Point2 To) Ends(int face, int edge)
    {
        var (ring, line) = (Shell.Faces[face], Shell.Edges[edge]);
        var at = ring.Edges.IndexOf(edge);
        var (here, there) = (ring.Chart[at], ring.Chart[(at + 1) % ring.Chart.Length]);
        return ring.Nodes[at] == line.From ? (here, there) : (there, here);
    }

    /// <summary>A crossing in the chart of one of its faces: from the one record, so that both sides agree.</summary>
    internal Point2 Place(int face, LinePoint point)
    {
        if (point.Edge < 0)
        {
            var clip = Of(face)!;
            var at = clip.ShellEdges.IndexOf(-1);
            return Point2.Between(clip.Corners[at], clip.After(at), point.Share);
        }

        var (from, to) = Ends(face, point.Edge);
        return Point2.Between(from, to, point.Share);
    }

    /// <summary>The move that lays a face's chart beside another's over their common edge.</summary>
    internal RigidMap Laying(int face, int edge, int onFace)
    {
        var (from, to) = Ends(face, edge);
        var (onFrom, onTo) = Ends(onFace, edge);
        return RigidMap.Laying(from, to, onFrom, onTo);
    }
}
