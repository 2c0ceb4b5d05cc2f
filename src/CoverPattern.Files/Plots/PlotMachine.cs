namespace CoverPattern.Files.Plots;

/// <summary>What a vector plotter or knife table is asked once.</summary>
/// <param name="Marks">Which side of the cloth it marks: a wrong answer mirrors every piece, so nothing is assumed.</param>
/// <param name="DrawPen">Number of the pen for lines drawn on the cloth, 1 to 8.</param>
/// <param name="NotchPen">Number of the tool that slits notches, 1 to 8.</param>
/// <param name="KnifePen">Number of the tool that cuts, 1 to 8.</param>
/// <param name="Origin">Where it counts from.</param>
/// <param name="Moves">How places are told it.</param>
/// <param name="IsSixteenBit">Whether it holds no number beyond 32,767 steps, 819.175 mm.</param>
public sealed record PlotMachine(
    MarkedSide Marks, int DrawPen = 1, int NotchPen = 2, int KnifePen = 3, PlotOrigin Origin = PlotOrigin.Corner, PenMoves Moves = PenMoves.Absolute, bool IsSixteenBit = false);
