namespace CoverPattern.Files.Plots;

/// <summary>Where a plotter counts from.</summary>
public enum PlotOrigin
{
    /// <summary>The corner where the roll's cut end meets its lower edge.</summary>
    Corner,

    /// <summary>The middle of what is plotted.</summary>
    Centre,
}
