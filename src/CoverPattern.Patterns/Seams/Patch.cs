using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Seams;

/// <summary>The part of a face that is left after everything is cut.</summary>
/// <param name="Face">Index of the face of the shell.</param>
/// <param name="Corners">Corners in the face's chart, counter-clockwise seen from outside, first not repeated.</param>
/// <param name="Arcs">Index of the arc from each corner to the next.</param>
public sealed record Patch(int Face, ImmutableArray<Point2> Corners, ImmutableArray<int> Arcs)
{
    /// <summary>Holes; the side of the first rim has the number after the last corner's, and so on.</summary>
    public ImmutableArray<PatchHole> Holes { get; init; } = [];

    /// <summary>Cloth in it, holes taken out, square millimetres.</summary>
    public double Area => Rings.SignedArea(Corners) + Holes.Sum(hole => Rings.SignedArea(hole.Ring));
}
