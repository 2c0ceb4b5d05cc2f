namespace CoverPattern.Patterns.Jobs;

/// <summary>Strips along the finished edge that lie on the ground.</summary>
/// <param name="Cloth">Name of their cloth.</param>
/// <param name="Width">Finished width.</param>
/// <param name="IsInward">Inward, under a floor sheet, lapped at corners; else outward, for earth or sand bags, with gussets.</param>
public sealed record GroundFlapWish(string Cloth, Measure Width, bool IsInward);
