namespace CoverPattern.Patterns.Jobs;

/// <summary>What a lay is made for.</summary>
public enum LayStyle
{
    /// <summary>The shortest lay that is found.</summary>
    Tight,

    /// <summary>Rows with straight cuts and few turns, for shears and rule.</summary>
    ByHand,
}
