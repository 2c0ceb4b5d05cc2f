using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Shells;

/// <summary>A plane face of a shell.</summary>
/// <param name="Label">The facet's label; a skirt face has the facet's above it with "k" behind.</param>
/// <param name="Kind">What it covers.</param>
/// <param name="Nodes">Corners, counter-clockwise seen from outside.</param>
/// <param name="Edges">Index of the edge from each corner to the next.</param>
/// <param name="Chart">The corners in the face's own plane, seen from outside, first corner at the origin, first edge on +x.</param>
public sealed record ShellFace(
    string Label,
    FaceKind Kind,
    ImmutableArray<int> Nodes,
    ImmutableArray<int> Edges,
    ImmutableArray<Point2> Chart);
