namespace CoverPattern.Patterns.Jobs;

/// <summary>A band of coated cloth over the foot of the cover.</summary>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Width">How high it reaches above the finished edge, positive.</param>
public sealed record SplashWish(string Cloth, Measure Width);
