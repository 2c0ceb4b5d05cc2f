namespace CoverPattern.Patterns.Openings;

/// <summary>A side of a rim, seen from outside.</summary>
public enum RimSide
{
    /// <summary>All of a closed rim.</summary>
    Whole,

    /// <summary>From the finished edge up on the right.</summary>
    Right,

    /// <summary>Between the jambs.</summary>
    Head,

    /// <summary>Down to the finished edge on the left.</summary>
    Left,
}
