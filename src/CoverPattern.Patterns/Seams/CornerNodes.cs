using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Tells which corners of patches are corners of the shell, and which of these are hubs.</summary>
public sealed class CornerNodes
{
    private readonly ImmutableArray<ImmutableArray<int>> nodes;
    private readonly ImmutableHashSet<int> hubs;
    private readonly ImmutableHashSet<int> border;

    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    public CornerNodes(Shell shell, Subdivision cut)
    {
        System.ArgumentNullException.ThrowIfNull(shell);
        System.ArgumentNullException.ThrowIfNull(cut);
        nodes = [.. cut.Patches.Select(patch => NodesOf(shell, patch))];
        hubs = [.. shell.Faces.Where(face => face.Kind == FaceKind.Facet).SelectMany(face => face.Nodes)];
        border = [.. shell.Edges.Where(edge => IsBorder(shell, edge)).SelectMany(edge => new[] { edge.From, edge.To })];
    }

    /// <summary>Index of the shell's node at a patch's corner; -1 where a line was cut between two nodes.</summary>
    /// <param name="corner">The patch's edge that begins at the corner.</param>
    public int NodeAt(PatchSide corner) => nodes[corner.Patch][corner.Edge];

    /// <summary>Whether the corner lies over a hub of the frame.</summary>
    /// <param name="corner">The patch's edge that begins at the corner.</param>
    public bool IsHub(PatchSide corner) => hubs.Contains(NodeAt(corner));

    /// <summary>What kind of place the corner is.</summary>
    /// <param name="corner">The patch's edge that begins at the corner.</param>
    internal CrossingPlace PlaceOf(PatchSide corner) => NodeAt(corner) switch
    {
        < 0 => CrossingPlace.Edge,
        var node when !hubs.Contains(node) => CrossingPlace.Foot,
        var node => border.Contains(node) ? CrossingPlace.BaseHub : CrossingPlace.Hub,
    };

    /// <summary>A clipped face keeps the corners of its chart as they are, number by number.</summary>
    private static ImmutableArray<int> NodesOf(Shell shell, Patch patch)
    {
        var face = shell.Faces[patch.Face];
        return [.. patch.Corners.Select(corner => face.Chart.IndexOf(corner)).Select(at => at < 0 ? -1 : face.Nodes[at])];
    }

    /// <summary>An edge of a facet beyond which no facet lies.</summary>
    private static bool IsBorder(Shell shell, ShellEdge edge) =>
        IsFacet(shell, edge.Left) != IsFacet(shell, edge.Right);

    private static bool IsFacet(Shell shell, int face) => face >= 0 && shell.Faces[face].Kind == FaceKind.Facet;
}
