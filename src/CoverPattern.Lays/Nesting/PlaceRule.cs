namespace CoverPattern.Lays.Nesting;

/// <summary>How two places of an outline in different turns are compared.</summary>
internal enum PlaceRule
{
    /// <summary>By the left end.</summary>
    LeastLeft,

    /// <summary>By the right end.</summary>
    LeastRight,

    /// <summary>By the middle.</summary>
    LeastMiddle,
}
