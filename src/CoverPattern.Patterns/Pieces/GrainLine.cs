using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A line along the warp.</summary>
/// <param name="From">First end.</param>
/// <param name="To">Other end; for one-way cloth the end that goes first.</param>
public sealed record GrainLine(Point2 From, Point2 To);
