using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A hole of an added piece: a circle about its origin, or a ring.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Edge">Its rim; it has a radius where it is round.</param>
public sealed record AddedCutout(string Purpose, AddedEdge Edge)
{
    /// <summary>The rim where it is no circle: clockwise from where its arc begins, first point not repeated, millimetres; empty otherwise.</summary>
    public ImmutableArray<Point2> Ring { get; init; } = [];
}
