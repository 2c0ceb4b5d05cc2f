using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>A line of straight steps.</summary>
/// <param name="Layer">What it is for.</param>
/// <param name="Points">At least two corners, millimetres; the first is not repeated when closed.</param>
/// <param name="IsClosed">Whether the last corner is joined to the first.</param>
public sealed record DrawnLine(DrawingLayer Layer, ImmutableArray<Point2> Points, bool IsClosed)
{
    /// <summary>Its straight steps from corner to corner.</summary>
    public IEnumerable<(Point2 From, Point2 To)> Steps()
    {
        for (var i = 0; i < (IsClosed ? Points.Length : Points.Length - 1); i++)
        {
            yield return (Points[i], Points[(i + 1) % Points.Length]);
        }
    }
}
