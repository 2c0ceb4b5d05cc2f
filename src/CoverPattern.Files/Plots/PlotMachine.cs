namespace CoverPattern.Files.Plots;

/// <summary>What a vector plotter or knife table is told once.</summary>
/// <param name="DrawPen">Number of the pen for lines drawn on the cloth, 1 to 8.</param>
/// <param name="NotchPen">Number of the tool that slits notches, 1 to 8.</param>
/// <param name="KnifePen">Number of the tool that cuts, 1 to 8.</param>
/// <param name="Origin">Where it counts from.</param>
/// <param name="MarksFarSide">Whether it marks the side of the cloth that lies on the table, so that the plot must be mirrored across the roll.</param>
/// <param name="IsSixteenBit">Whether it holds no number beyond 32,767 steps, 819.175 mm.</param>
public sealed record PlotMachine(
    int DrawPen = 1, int NotchPen = 2, int KnifePen = 3, PlotOrigin Origin = PlotOrigin.Corner, bool MarksFarSide = false, bool IsSixteenBit = false);
