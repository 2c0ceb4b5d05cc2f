namespace CoverPattern.Patterns.Jobs;

/// <summary>Which sides of a rim open; the others are sewn. Right and left as seen from outside.</summary>
public enum OpensAt
{
    /// <summary>The whole rim: of a door both jambs and the head.</summary>
    Around,

    /// <summary>The left jamb.</summary>
    Left,

    /// <summary>The right jamb.</summary>
    Right,

    /// <summary>Both jambs.</summary>
    Both,

    /// <summary>A line from the middle of the head to the finished edge, between two leaves.</summary>
    Middle,
}
