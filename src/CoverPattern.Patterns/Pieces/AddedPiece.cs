using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A piece that is no part of a shell: ring, pane, screen, patch, strip.</summary>
/// <param name="Label">Label of the piece on the first cover, unlike all others; without blanks.</param>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Corners">Corners of the sew line, counter-clockwise seen from outside, grain along +x, up the cover along +y, millimetres.</param>
/// <param name="Edges">Its edges in order, without gap, the first from the first corner.</param>
/// <param name="Cutouts">Its holes.</param>
public sealed record AddedPiece(
    string Label,
    string Cloth,
    PieceKind Kind,
    ImmutableArray<Point2> Corners,
    ImmutableArray<AddedEdge> Edges,
    ImmutableArray<AddedCutout> Cutouts)
{
    /// <summary>Lines at which it bends.</summary>
    public ImmutableArray<FoldLine> Folds { get; init; } = [];

    /// <summary>The edges round the outline, then those of the holes.</summary>
    internal ImmutableArray<AddedEdge> AllEdges => [.. Edges, .. Cutouts.Select(cutout => cutout.Edge)];

    /// <summary>A disc about the origin, with one round edge.</summary>
    /// <param name="label">See <see cref="Label"/>.</param>
    /// <param name="cloth">See <see cref="Cloth"/>.</param>
    /// <param name="kind">See <see cref="Kind"/>.</param>
    /// <param name="edge">The edge; it has a radius.</param>
    public static AddedPiece Disc(string label, string cloth, PieceKind kind, AddedEdge edge)
    {
        ArgumentNullException.ThrowIfNull(edge);
        var corners = Circles.Polygon(default, edge.Radius ?? throw new ArgumentException("The edge of a disc has a radius.", nameof(edge)));
        return new AddedPiece(label, cloth, kind, corners, [edge with { Steps = corners.Length }], []);
    }

    /// <summary>A polygon with straight edges.</summary>
    /// <param name="label">See <see cref="Label"/>.</param>
    /// <param name="cloth">See <see cref="Cloth"/>.</param>
    /// <param name="kind">See <see cref="Kind"/>.</param>
    /// <param name="edges">Each with the corner at which it begins.</param>
    public static AddedPiece Polygon(string label, string cloth, PieceKind kind, ImmutableArray<(Point2 From, AddedEdge Edge)> edges) =>
        new(label, cloth, kind, [.. edges.Select(edge => edge.From)], [.. edges.Select(edge => edge.Edge)], []);

    /// <summary>Length of an edge, millimetres.</summary>
    internal double LengthOf(int edge)
    {
        if (AllEdges[edge].Radius is { } radius)
        {
            return 2 * Math.PI * radius;
        }

        if (edge >= Edges.Length)
        {
            return Rings.Perimeter(Cutouts[edge - Edges.Length].Ring);
        }

        var start = Edges.Take(edge).Sum(before => before.Steps);
        return Enumerable.Range(start, Edges[edge].Steps).Sum(i => Point2.Distance(Corners[i], Corners[(i + 1) % Corners.Length]));
    }
}
