namespace CoverPattern.Patterns.Jobs;

/// <summary>A deck that is plane but not level, under a frame that stands upright.</summary>
/// <param name="Fall">Fall over length on plan, a ratio; not negative.</param>
/// <param name="TowardsDegrees">Where it falls to, counter-clockwise seen from above, 0 at the front.</param>
public sealed record DeckTilt(double Fall, double TowardsDegrees);
