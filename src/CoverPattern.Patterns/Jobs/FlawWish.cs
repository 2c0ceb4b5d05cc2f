namespace CoverPattern.Patterns.Jobs;

/// <summary>A flawed area of a roll: an upright rectangle, as the cloth lies.</summary>
/// <param name="At">From the roll's cut end to where it begins.</param>
/// <param name="Across">From the lower edge of the roll to where it begins.</param>
/// <param name="Long">Its extent along the roll.</param>
/// <param name="Wide">Its extent across the roll.</param>
/// <param name="Grade">Least grade of the pieces that may lie on it; null: none may.</param>
public sealed record FlawWish(Measure At, Measure Across, Measure Long, Measure Wide, int? Grade);
