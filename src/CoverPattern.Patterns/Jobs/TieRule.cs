namespace CoverPattern.Patterns.Jobs;

/// <summary>Which hubs get a tie.</summary>
public enum TieRule
{
    /// <summary>None: the cover is held by its hem alone.</summary>
    None,

    /// <summary>Every hub of the top two rings, every second below, all base hubs.</summary>
    Usual,

    /// <summary>Every hub.</summary>
    Every,
}
