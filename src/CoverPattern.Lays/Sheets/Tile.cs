using CoverPattern.Geometry;

namespace CoverPattern.Lays.Sheets;

/// <summary>One sheet's part of a large drawing.</summary>
/// <param name="Number">From 1, row by row from the top, blank ones not counted.</param>
/// <param name="Column">From 0 at the left.</param>
/// <param name="Row">From 0 at the bottom.</param>
/// <param name="Area">What it shows of the drawing, overlap included, millimetres.</param>
public sealed record Tile(int Number, int Column, int Row, Box2 Area);
