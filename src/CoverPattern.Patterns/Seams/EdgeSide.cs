namespace CoverPattern.Patterns.Seams;

/// <summary>Which of two joined edges lies outside.</summary>
public enum EdgeSide
{
    /// <summary>No partner.</summary>
    None,

    /// <summary>Lies over its partner, outside, and sheds water onto it.</summary>
    Over,

    /// <summary>Lies under its partner.</summary>
    Under,
}
