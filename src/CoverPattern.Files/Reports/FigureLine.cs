using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>A line of a figure.</summary>
/// <param name="Style">Class that the style sheet knows.</param>
/// <param name="Points">Corners, millimetres on paper, y up.</param>
/// <param name="IsClosed">Whether the last corner is joined to the first.</param>
internal sealed record FigureLine(string Style, ImmutableArray<Point2> Points, bool IsClosed);
