namespace CoverPattern.Patterns.Jobs;

/// <summary>Which way pieces may lie for the look and stretch of a cloth.</summary>
public enum Nap
{
    /// <summary>The cloth looks the same from both ends of the roll.</summary>
    None,

    /// <summary>All pieces point the same way.</summary>
    OneWay,
}
