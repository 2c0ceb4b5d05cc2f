using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A line drawn on the cloth, never cut.</summary>
/// <param name="Path">Its corners from end to end; a closed line repeats its first corner.</param>
/// <param name="Purpose">What it shows, for people, such as "clip".</param>
public sealed record MarkLine(ImmutableArray<Point2> Path, string Purpose);
