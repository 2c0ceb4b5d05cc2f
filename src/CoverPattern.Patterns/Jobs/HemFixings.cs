namespace CoverPattern.Patterns.Jobs;

/// <summary>Where the hem is held: at every base hub and evenly between.</summary>
/// <param name="Spacing">Largest distance wished; 3 % more is allowed, so that a little too long a chord does not take one more.</param>
/// <param name="Height">Of the points over the finished edge.</param>
public sealed record HemFixings(Measure Spacing, Measure Height);
