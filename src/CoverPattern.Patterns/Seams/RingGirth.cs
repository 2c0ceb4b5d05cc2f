namespace CoverPattern.Patterns.Seams;

/// <summary>How long the cover is round a ring of hubs.</summary>
/// <param name="Ring">Ring of hubs, 0 at the base.</param>
/// <param name="LengthMm">Along the finished cloth from hub to hub, millimetres.</param>
public sealed record RingGirth(int Ring, double LengthMm);
