using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>What is left of a face above the hem.</summary>
/// <param name="Face">Index of the face.</param>
/// <param name="Corners">Corners in its chart, counter-clockwise; fewer than three when nothing is left.</param>
/// <param name="ShellEdges">For each corner the shell's edge that runs to the next corner; -1 for the cut along the hem.</param>
internal sealed record FaceClip(int Face, ImmutableArray<Point2> Corners, ImmutableArray<int> ShellEdges)
{
    // What is left of a face narrower than this is dropped, millimetres; its neighbours' edges become the hem.
    private const double LeastPatch = 1;

    /// <summary>What is left of every face, in their order; faces that are dropped are left out.</summary>
    internal static ImmutableArray<FaceClip> Kept(Shell shell) =>
        [.. shell.Faces.Select((_, face) => Clip(shell, face)).Where(clip => clip.Corners.Length >= 3 && clip.Width >= LeastPatch)];

    internal static FaceClip Clip(Shell shell, int index)
    {
        var face = shell.Faces[index];
        var corners = ImmutableArray.CreateBuilder<Point2>();
        var edges = ImmutableArray.CreateBuilder<int>();
        for (var i = 0; i < face.Nodes.Length; i++)
        {
            var next = (i + 1) % face.Nodes.Length;
            var (here, there) = (shell.Nodes[face.Nodes[i]].AboveHem, shell.Nodes[face.Nodes[next]].AboveHem);
            var leavesHem = there > 0;
            if (here >= 0)
            {
                corners.Add(face.Chart[i]);
                edges.Add(here > 0 || there >= 0 ? face.Edges[i] : -1);
            }

            if ((here < 0 && there > 0) || (here > 0 && there < 0))
            {
                corners.Add(Crossing(shell, face, i));
                edges.Add(leavesHem ? face.Edges[i] : -1);
            }
        }

        return new FaceClip(index, corners.ToImmutable(), edges.ToImmutable());
    }

    /// <summary>Share of an edge's length that lies above the hem, 0 to 1.</summary>
    internal static double KeptShare(Shell shell, int edge)
    {
        var (from, to) = (shell.Nodes[shell.Edges[edge].From].AboveHem, shell.Nodes[shell.Edges[edge].To].AboveHem);
        return Math.Min(from, to) >= 0 ? 1 : Math.Max(from, to) / (Math.Max(from, to) - Math.Min(from, to));
    }

    /// <summary>The corner after one of the corners.</summary>
    internal Point2 After(int corner) => Corners[(corner + 1) % Corners.Length];

    private double Width
    {
        get
        {
            var longest = Corners.Select((corner, i) => Point2.Distance(corner, After(i))).Max();
            return 2 * Rings.SignedArea(Corners) / longest;
        }
    }

    /// <summary>The point where the hem crosses an edge: the kept share of it, measured from its upper end.</summary>
    private static Point2 Crossing(Shell shell, ShellFace face, int i)
    {
        var next = (i + 1) % face.Nodes.Length;
        var share = KeptShare(shell, face.Edges[i]);
        return shell.Nodes[face.Nodes[i]].AboveHem > 0
            ? Point2.Between(face.Chart[i], face.Chart[next], share)
            : Point2.Between(face.Chart[next], face.Chart[i], share);
    }
}
