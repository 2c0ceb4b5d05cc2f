using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A mark inside a piece.</summary>
/// <param name="At">Its place.</param>
/// <param name="Purpose">What it shows, for people.</param>
public sealed record DrillMark(Point2 At, string Purpose);
