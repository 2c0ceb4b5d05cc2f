using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A line where the cloth goes over a strut uncut.</summary>
/// <param name="From">First end; a corner of the sew line.</param>
/// <param name="To">Other end; a corner of the sew line.</param>
public sealed record FoldLine(Point2 From, Point2 To);
