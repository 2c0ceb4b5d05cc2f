using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Seams;

/// <summary>The part of a face that is left after everything is cut.</summary>
/// <param name="Face">Index of the face of the shell.</param>
/// <param name="Corners">Corners in the face's chart, counter-clockwise seen from outside, first not repeated.</param>
/// <param name="Arcs">Index of the arc from each corner to the next.</param>
public sealed record Patch(int Face, ImmutableArray<Point2> Corners, ImmutableArray<int> Arcs);
