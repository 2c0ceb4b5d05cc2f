namespace CoverPattern.Patterns.Frames;

/// <summary>A straight bar between two hubs.</summary>
/// <param name="From">Index of one hub, the lower index.</param>
/// <param name="To">Index of the other hub.</param>
/// <param name="Class">Label of its class of equal lengths, "A" the shortest.</param>
/// <param name="LengthMm">Hub centre to hub centre, millimetres.</param>
public sealed record Strut(int From, int To, string Class, double LengthMm);
