namespace CoverPattern.Patterns.Frames;

/// <summary>A name by which the trade calls a part of the whole ball.</summary>
/// <param name="Name">A fraction, such as "5/8".</param>
/// <param name="Rows">Rows of facets kept, counted from the top.</param>
public sealed record CutName(string Name, int Rows);
