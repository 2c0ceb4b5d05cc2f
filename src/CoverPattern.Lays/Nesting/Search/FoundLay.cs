using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>A lay without overlaps.</summary>
/// <param name="Length">Used length, steps.</param>
/// <param name="Spots">One entry a copy.</param>
internal sealed record FoundLay(int Length, ImmutableArray<Spot> Spots);
