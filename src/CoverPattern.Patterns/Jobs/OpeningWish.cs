namespace CoverPattern.Patterns.Jobs;

/// <summary>An opening of any outline.</summary>
/// <param name="Outline">Its finished outline.</param>
/// <param name="Place">Where it lies; whole facets have their own place.</param>
/// <param name="Laid">How it is laid over edges.</param>
/// <param name="TurnUnder">Cloth of the cover turned under at its rim.</param>
public sealed record OpeningWish(OutlineWish Outline, OpeningPlace Place, LayingRule Laid, Measure TurnUnder)
{
    /// <summary>Name of the clear sheet that is sewn in behind it, among the cloths; null when it stays open.</summary>
    public string? Sheet { get; init; }

    /// <summary>How far the sheet reaches beyond the rim all round.</summary>
    public Measure Lap { get; init; }
}
