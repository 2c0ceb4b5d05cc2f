using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>A face of a row of the cover as it lies in the drawing of that row.</summary>
/// <param name="Label">Its label.</param>
/// <param name="Kind">What it covers.</param>
/// <param name="Panel">The piece of cloth it belongs to, without the cover's name.</param>
/// <param name="Corners">Ring, counter-clockwise seen from outside; millimetres before the drawing's scale.</param>
/// <param name="Arcs">Index of the arc from each corner to the next.</param>
/// <param name="Holes">Windows in it: name of what fills the hole with its rim's label, and the ring.</param>
internal sealed record RowFace(
    string Label,
    FaceKind Kind,
    string Panel,
    ImmutableArray<Point2> Corners,
    ImmutableArray<int> Arcs,
    ImmutableArray<(string Name, ImmutableArray<Point2> Ring)> Holes)
{
    public bool IsFacet => Kind == FaceKind.Facet;

    /// <summary>Mean of the corners.</summary>
    public Point2 Middle => (1.0 / Corners.Length) * Corners.Aggregate((left, right) => left + right);
}
