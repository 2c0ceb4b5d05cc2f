namespace CoverPattern.Patterns.Jobs;

/// <summary>Which way is up in a survey.</summary>
public enum SurveyUp
{
    /// <summary>The third coordinate.</summary>
    Z,

    /// <summary>The second coordinate, as many drawing programs have it.</summary>
    Y,

    /// <summary>Square to the line of base hubs: for a frame measured lying askew.</summary>
    Base,
}
