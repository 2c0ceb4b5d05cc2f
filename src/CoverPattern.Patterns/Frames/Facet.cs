using System.Collections.Immutable;

namespace CoverPattern.Patterns.Frames;

/// <summary>A plane face between struts.</summary>
/// <param name="Label">Row and position, such as "F1.07".</param>
/// <param name="Row">Row of facets, 1 at the deck, counted up.</param>
/// <param name="Hubs">Indexes of its hubs, counter-clockwise seen from outside, beginning with the edge along the ring of hubs.</param>
public sealed record Facet(string Label, int Row, ImmutableArray<int> Hubs);
