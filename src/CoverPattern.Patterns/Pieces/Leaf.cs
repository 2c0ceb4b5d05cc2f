namespace CoverPattern.Patterns.Pieces;

/// <summary>One half of a flap that opens in the middle, seen from outside.</summary>
internal enum Leaf
{
    /// <summary>The flap is one.</summary>
    None,

    /// <summary>The half at the right jamb.</summary>
    Right,

    /// <summary>The half at the left jamb.</summary>
    Left,
}
