namespace CoverPattern.Patterns.Jobs;

/// <summary>The price of a cloth, or of clear sheet.</summary>
/// <param name="Cloth">Its name.</param>
/// <param name="PerMetre">Money for a running metre off the roll, 0 or more.</param>
public sealed record ClothRate(string Cloth, double PerMetre);
