using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>Faces of a shell that become one piece of cloth.</summary>
/// <param name="Label">Label of the piece, such as "B1.3".</param>
/// <param name="Shape">What it is on the cover.</param>
/// <param name="Faces">Indexes of its faces, the main one first: panels that the frame's turns map onto each other list them alike.</param>
public sealed record PlannedPanel(string Label, PanelShape Shape, ImmutableArray<int> Faces);
