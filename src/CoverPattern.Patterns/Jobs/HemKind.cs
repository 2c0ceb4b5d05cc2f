namespace CoverPattern.Patterns.Jobs;

/// <summary>How the lower edge is finished and held.</summary>
public enum HemKind
{
    /// <summary>Turned up and stitched; grommets go through it.</summary>
    Turned,

    /// <summary>Turned up over a webbing that runs all round in it.</summary>
    Webbing,

    /// <summary>A hem sleeve for a pipe, rod or rope, broken at the base hubs.</summary>
    Sleeve,

    /// <summary>Held to the deck's side by a screw strip.</summary>
    Strip,
}
