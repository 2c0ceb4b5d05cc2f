using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Openings;

/// <summary>A part of a face between its border and rims.</summary>
/// <param name="Face">Index of the face.</param>
/// <param name="Region">Index of the region it belongs to; -1 for the cover's own cloth.</param>
/// <param name="Corners">Corners in the face's chart, counter-clockwise.</param>
/// <param name="Edges">What runs from each corner to the next.</param>
internal sealed record FaceCell(int Face, int Region, ImmutableArray<Point2> Corners, ImmutableArray<CellEdge> Edges)
{
    /// <summary>Stretches that are rings inside this cell, each as its region and its index there.</summary>
    internal ImmutableArray<(int Region, int Stretch)> Rings { get; init; } = [];
}
