namespace CoverPattern.Files.Plots;

/// <summary>How a result is plotted.</summary>
/// <param name="Machine">What the plotter was told.</param>
/// <param name="LongestMm">Most length of a section, millimetres; null where the machine takes the whole lay.</param>
public sealed record PlotWish(PlotMachine Machine, double? LongestMm);
