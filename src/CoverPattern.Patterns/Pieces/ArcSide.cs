namespace CoverPattern.Patterns.Pieces;

/// <summary>One side of a line on the cover; what is joined to what is known by it.</summary>
/// <param name="Arc">Label of the line, such as "S017"; unique on a cover.</param>
/// <param name="IsSecond">Which of its two sides.</param>
internal readonly record struct ArcSide(string Arc, bool IsSecond)
{
    /// <summary>The other side of the same line.</summary>
    internal ArcSide Opposite => this with { IsSecond = !IsSecond };
}
