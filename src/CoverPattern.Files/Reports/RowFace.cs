using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>A face of a row of the cover as it lies in the drawing of that row.</summary>
/// <param name="Label">Its label.</param>
/// <param name="Kind">What it covers.</param>
/// <param name="Panel">The piece of cloth it belongs to, without the cover's name; empty where openings take all of the face.</param>
/// <param name="Corners">Ring, counter-clockwise seen from outside; millimetres before the drawing's scale. None where openings take all of the face.</param>
/// <param name="Arcs">Index of the arc from each corner to the next.</param>
/// <param name="Marks">Openings and lines in it, as it lies.</param>
internal sealed record RowFace(
    string Label,
    FaceKind Kind,
    string Panel,
    ImmutableArray<Point2> Corners,
    ImmutableArray<int> Arcs,
    CoverMarks Marks)
{
    public bool IsFacet => Kind == FaceKind.Facet;

    /// <summary>Corners of cloth and openings.</summary>
    public IEnumerable<Point2> Reach => Corners.Concat(Marks.Voids.SelectMany(one => one.Ring));

    /// <summary>Mean of the corners.</summary>
    public Point2 Middle
    {
        get
        {
            var corners = Corners.IsEmpty ? [.. Reach] : Corners;
            return (1.0 / corners.Length) * corners.Aggregate((left, right) => left + right);
        }
    }

    /// <summary>The face in another size.</summary>
    /// <param name="ratio">New length over old.</param>
    public RowFace Sized(double ratio) => this with { Corners = [.. Corners.Select(corner => ratio * corner)], Marks = Marks.Map(_ => point => ratio * point) };
}
