namespace CoverPattern.Files.Plots;

/// <summary>How the places of a plot are told.</summary>
public enum PenMoves
{
    /// <summary>From the origin.</summary>
    Absolute,

    /// <summary>From the place before, for machines that hold no large numbers.</summary>
    Relative,
}
