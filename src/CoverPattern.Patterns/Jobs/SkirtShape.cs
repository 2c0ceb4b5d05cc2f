namespace CoverPattern.Patterns.Jobs;

/// <summary>How the skirt hangs from the base chords.</summary>
public enum SkirtShape
{
    /// <summary>Straight down to the finished edge.</summary>
    Vertical,

    /// <summary>The base facets' planes go on below their chords, neighbours meeting where their planes meet.</summary>
    Slope,

    /// <summary>Straight down by the drop at every hub, so that the finished edge runs parallel to the base chords.</summary>
    Chords,
}
