namespace CoverPattern.Patterns.Jobs;

/// <summary>Which way a pipe runs where it goes through the cover.</summary>
public enum PipeRun
{
    /// <summary>Straight up.</summary>
    Vertical,

    /// <summary>Level, outward.</summary>
    Level,
}
