namespace CoverPattern.Patterns.Jobs;

/// <summary>Which height of the base the deck passes through.</summary>
public enum DeckDatum
{
    /// <summary>The lowest hub centres.</summary>
    Lowest,

    /// <summary>The mean height of the base hub centres.</summary>
    Mean,
}
