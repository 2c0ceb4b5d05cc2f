using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Which faces of a shell become which piece.</summary>
/// <param name="Panels">Together they hold every face once.</param>
/// <param name="Slits">Edges of the shell that are cut though both faces are on one panel.</param>
/// <param name="Turned">Edges at whose seam the other side than usual lies over.</param>
/// <param name="FaceRows">Row of each face; 0 for the skirt.</param>
/// <param name="Faults">What the job says wrongly about panels; with any, the rest of the plan is not to be used.</param>
/// <param name="Notices">Cuts and slits that the program chose.</param>
public sealed record PanelPlan(
    ImmutableArray<PlannedPanel> Panels,
    ImmutableArray<int> Slits,
    ImmutableArray<int> Turned,
    ImmutableArray<int> FaceRows,
    ImmutableArray<Fault> Faults,
    ImmutableArray<Notice> Notices)
{
    /// <summary>Every facet a panel of its own, with its skirt; facets that bend over a line without strut are one.</summary>
    public static PanelPlan SingleFacets(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);
        var taken = new bool[shell.Faces.Length];
        var panels = ImmutableArray.CreateBuilder<PlannedPanel>();
        for (var face = 0; face < shell.Faces.Length; face++)
        {
            if (shell.Faces[face].Kind == FaceKind.Facet && !taken[face])
            {
                panels.Add(Bent(shell, face, taken));
            }
        }

        // Where a bend ends at a base hub, or a hub has one facet only, two skirts of one panel meet: they stay apart, for cloth cannot lie flat round the hub.
        var slits = Enumerable.Range(0, shell.Edges.Length).Where(edge => panels.Any(panel => panel.Faces.Length > 2 && AreSkirtsOf(shell, panel, edge)));
        return new PanelPlan(panels.ToImmutable(), [.. slits], [], [.. shell.Faces.Select(_ => 0)], [], []);
    }

    private static bool AreSkirtsOf(Shell shell, PlannedPanel panel, int edge) => shell.Edges[edge].Right >= 0
        && new[] { shell.Edges[edge].Left, shell.Edges[edge].Right }.All(face => shell.Faces[face].Kind == FaceKind.Skirt && panel.Faces.Contains(face));

    /// <summary>A facet with all that hang together with it over bends, labelled for it.</summary>
    private static PlannedPanel Bent(Shell shell, int first, bool[] taken)
    {
        var facets = new List<int> { first };
        taken[first] = true;
        for (var at = 0; at < facets.Count; at++)
        {
            foreach (var edge in shell.Faces[facets[at]].Edges.Where(edge => shell.Edges[edge].IsFold).Select(edge => shell.Edges[edge]))
            {
                var other = edge.Left == facets[at] ? edge.Right : edge.Left;
                if (!taken[other])
                {
                    taken[other] = true;
                    facets.Add(other);
                }
            }
        }

        return Single(shell, first) with { Faces = [.. facets, .. facets.SelectMany(facet => SkirtsOf(shell, facet))] };
    }

    /// <summary>The panel of one facet, labelled for it.</summary>
    internal static PlannedPanel Single(Shell shell, int facet) =>
        new("P" + shell.Faces[facet].Label[1..], PanelShape.Facet, [facet, .. SkirtsOf(shell, facet)]);

    /// <summary>The skirt faces that hang from a facet.</summary>
    internal static IEnumerable<int> SkirtsOf(Shell shell, int facet) => shell.Faces[facet].Edges
        .Select(edge => shell.Edges[edge].Left == facet ? shell.Edges[edge].Right : shell.Edges[edge].Left)
        .Where(face => face >= 0 && shell.Faces[face].Kind == FaceKind.Skirt);
}
