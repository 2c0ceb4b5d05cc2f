namespace CoverPattern.Patterns.Jobs;

/// <summary>The strip that hangs from the base chords.</summary>
/// <param name="Drop">How far the finished edge hangs below the deck or ground, before ease; with chords below each hub; not negative.</param>
/// <param name="Shape">How it hangs.</param>
public sealed record SkirtWish(Measure Drop, SkirtShape Shape = SkirtShape.Vertical)
{
    /// <summary>A band of other cloth over the foot of the cover; null when there is none.</summary>
    public SplashWish? Splash { get; init; }
}
