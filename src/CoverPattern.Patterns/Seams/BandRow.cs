using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>A row of facets that closes round the frame.</summary>
/// <param name="Number">Counted from the deck up.</param>
/// <param name="Facets">Counter-clockwise seen from above.</param>
/// <param name="Uprights">For each facet the edge that it shares with the next one.</param>
internal sealed record BandRow(int Number, ImmutableArray<int> Facets, ImmutableArray<int> Uprights);
