using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Plots;

/// <summary>How a result is printed.</summary>
/// <param name="LongestMm">Most length of a page with a part of a lay, millimetres; null for the whole lay on one page.</param>
/// <param name="Tiles">Paper for tiles; none when null.</param>
public sealed record PdfWish(double? LongestMm, TileWish? Tiles);
