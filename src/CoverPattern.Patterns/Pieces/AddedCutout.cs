using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A hole of an added piece.</summary>
/// <param name="Purpose">What it is for, such as "window".</param>
/// <param name="Edge">Its rim; a circle about the origin when it has a radius.</param>
public sealed record AddedCutout(string Purpose, AddedEdge Edge)
{
    /// <summary>The rim where it is no circle: clockwise, millimetres; empty otherwise.</summary>
    public ImmutableArray<Point2> Ring { get; init; } = [];
}
