using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A roll that there is.</summary>
/// <param name="Name">What is written on it; empty when nothing is.</param>
/// <param name="Length">Cloth on it; null: as much as is needed.</param>
/// <param name="Flaws">Flawed areas.</param>
public sealed record RollWish(string Name, Measure? Length, ImmutableArray<FlawWish> Flaws);
