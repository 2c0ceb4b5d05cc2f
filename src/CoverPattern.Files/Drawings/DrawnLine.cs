using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>A line of straight steps.</summary>
/// <param name="Layer">What it is for.</param>
/// <param name="Points">At least two corners, millimetres; the first is not repeated when closed.</param>
/// <param name="IsClosed">Whether the last corner is joined to the first.</param>
public sealed record DrawnLine(DrawingLayer Layer, ImmutableArray<Point2> Points, bool IsClosed);
