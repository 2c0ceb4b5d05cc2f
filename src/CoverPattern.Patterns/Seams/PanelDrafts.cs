using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>What becomes of one wish for panels.</summary>
/// <param name="Panels">Its panels, not yet labelled.</param>
/// <param name="Slits">Edges of the shell that are cut though both faces may be on one panel.</param>
/// <param name="Faults">What is wrong with the wish.</param>
/// <param name="Notices">What the program chose.</param>
internal sealed record PanelDrafts(
    ImmutableArray<PanelDraft> Panels, ImmutableArray<int> Slits, ImmutableArray<Fault> Faults, ImmutableArray<Notice> Notices)
{
    internal static PanelDrafts Wrong(IEnumerable<Fault> faults) => new([], [], [.. faults], []);
}

/// <summary>A panel without label.</summary>
/// <param name="Shape">What it is.</param>
/// <param name="Row">Row of a band; 0 elsewhere.</param>
/// <param name="Name">Name of a group; may be empty.</param>
/// <param name="Facets">The main one first.</param>
internal sealed record PanelDraft(PanelShape Shape, int Row, string Name, ImmutableArray<int> Facets);
