namespace CoverPattern.Lays.Estimates;

/// <summary>Zips of one length.</summary>
/// <param name="LengthMm">Length as it is sold, millimetres.</param>
/// <param name="Count">How many.</param>
public sealed record NotionSize(double LengthMm, int Count);
