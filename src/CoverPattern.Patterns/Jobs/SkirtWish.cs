namespace CoverPattern.Patterns.Jobs;

/// <summary>The strip that hangs from the base chords.</summary>
/// <param name="Drop">How far the finished edge hangs below the deck, before ease; not negative.</param>
public sealed record SkirtWish(Measure Drop);
