namespace CoverPattern.Patterns.Jobs;

/// <summary>How what fills an opening meets its rim.</summary>
public enum JoinKind
{
    /// <summary>Sewn in behind, with a lap.</summary>
    Sewn,

    /// <summary>By a zip; the rim is the middle of its teeth.</summary>
    Zip,

    /// <summary>By hook and loop behind the rim, with a lap.</summary>
    HookLoop,

    /// <summary>Slipped into a pocket between the cover and a ring round the rim.</summary>
    Ring,
}
