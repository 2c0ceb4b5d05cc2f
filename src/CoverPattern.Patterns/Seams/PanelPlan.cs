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
    /// <summary>Every facet a panel of its own, with its skirt.</summary>
    public static PanelPlan SingleFacets(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);
        var facets = Enumerable.Range(0, shell.Faces.Length).Where(face => shell.Faces[face].Kind == FaceKind.Facet);
        return new PanelPlan([.. facets.Select(face => Single(shell, face))], [], [], [.. shell.Faces.Select(_ => 0)], [], []);
    }

    /// <summary>The panel of one facet, labelled for it.</summary>
    internal static PlannedPanel Single(Shell shell, int facet) =>
        new("P" + shell.Faces[facet].Label[1..], PanelShape.Facet, [facet, .. SkirtsOf(shell, facet)]);

    /// <summary>The skirt faces that hang from a facet.</summary>
    internal static IEnumerable<int> SkirtsOf(Shell shell, int facet) => shell.Faces[facet].Edges
        .Select(edge => shell.Edges[edge].Left == facet ? shell.Edges[edge].Right : shell.Edges[edge].Left)
        .Where(face => face >= 0 && shell.Faces[face].Kind == FaceKind.Skirt);
}
