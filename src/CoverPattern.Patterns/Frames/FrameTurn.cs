using System.Collections.Immutable;

namespace CoverPattern.Patterns.Frames;

/// <summary>A turn about the upright axis that maps a frame onto itself.</summary>
/// <param name="Angle">Counter-clockwise seen from above, radians, 0 to 2 pi.</param>
/// <param name="Hubs">For each hub the index of the one it comes to.</param>
/// <param name="Facets">For each facet the index of the one it comes to.</param>
public sealed record FrameTurn(double Angle, ImmutableArray<int> Hubs, ImmutableArray<int> Facets);
