namespace CoverPattern.Patterns.Jobs;

/// <summary>Pads between the struts, one a facet.</summary>
/// <param name="Cloth">Name of their cloth, or of whatever comes off a roll.</param>
/// <param name="Tuck">How far a pad reaches behind the wall of the tubes, so that they hold it.</param>
public sealed record InsulationWish(string Cloth, Measure Tuck);
