namespace CoverPattern.Lays.Nesting.Search;

/// <summary>A shape and where its origin lies, steps.</summary>
internal readonly record struct Spot(PreparedShape Shape, int X, int Y);
