namespace CoverPattern.Patterns.Jobs;

/// <summary>How far a piece may turn away from its grain line on the roll.</summary>
public enum TurnRule
{
    /// <summary>Grain along the roll, either end first: 0 or 180 degrees.</summary>
    Grain,

    /// <summary>Any turn; the grain line is advice.</summary>
    Free,
}
