using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Sorts the skirt below a panel: one face stays folded to its facet, several side by side are a strip of their own.</summary>
/// <remarks>Facets and skirt faces round a base hub do not sum to a full turn, so they cannot lie flat as one piece; upright faces alone always can.</remarks>
internal static class SkirtRuns
{
    /// <summary>Runs of skirt faces that hang side by side, each counter-clockwise round the cover.</summary>
    /// <param name="shell">The surface.</param>
    /// <param name="facets">Facets of one panel.</param>
    /// <param name="slits">Edges of the shell that are slit: a strip all round is cut below one of them.</param>
    internal static ImmutableArray<ImmutableArray<int>> Of(Shell shell, IEnumerable<int> facets, IReadOnlySet<int> slits)
    {
        int[] skirts = [.. facets.SelectMany(facet => PanelPlan.SkirtsOf(shell, facet))];
        var nextOf = skirts.ToDictionary(skirt => skirt, skirt => skirts.FirstOrDefault(other => other != skirt && FollowsOn(shell, skirt, other), -1));
        var followers = nextOf.Values.ToHashSet();
        var runs = skirts.Where(skirt => !followers.Contains(skirt)).Select(start => Run(nextOf, start)).ToList();
        var round = skirts.Except(runs.SelectMany(run => run)).ToArray();
        if (round.Length > 0)
        {
            runs.Add(Run(nextOf, round.FirstOrDefault(skirt => IsBelowSlit(shell, skirt, slits), round[0])));
        }

        return [.. runs];
    }

    /// <summary>The upright edge between two skirt faces; -1 when they do not touch.</summary>
    internal static int Between(Shell shell, int skirt, int other) => shell.Faces[skirt].Edges.Intersect(shell.Faces[other].Edges).FirstOrDefault(-1);

    private static ImmutableArray<int> Run(Dictionary<int, int> nextOf, int start)
    {
        var run = new List<int>();
        for (var skirt = start; skirt >= 0 && !run.Contains(skirt); skirt = nextOf[skirt])
        {
            run.Add(skirt);
        }

        return [.. run];
    }

    /// <summary>Whether the other face hangs ahead, counter-clockwise: this one runs up along the edge between them.</summary>
    private static bool FollowsOn(Shell shell, int skirt, int other)
    {
        var edge = Between(shell, skirt, other);
        if (edge < 0)
        {
            return false;
        }

        var nodes = shell.Faces[skirt].Nodes;
        var at = shell.Faces[skirt].Edges.IndexOf(edge);
        return shell.Nodes[nodes[(at + 1) % nodes.Length]].Position.Z > shell.Nodes[nodes[at]].Position.Z;
    }

    private static bool IsBelowSlit(Shell shell, int skirt, IReadOnlySet<int> slits)
    {
        // The strip begins where its first face runs down: the chord's first hub.
        var facetEdge = shell.Faces[skirt].Edges.First(edge => shell.Edges[edge].Right >= 0 && shell.Faces[shell.Edges[edge].Left].Kind != shell.Faces[shell.Edges[edge].Right].Kind);
        var start = shell.Edges[facetEdge].From;
        return slits.Any(slit => shell.Edges[slit].From == start || shell.Edges[slit].To == start);
    }
}
