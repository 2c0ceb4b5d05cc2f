namespace CoverPattern.Files.Drawings;

/// <summary>Lines and texts of one purpose.</summary>
/// <param name="Name">Name in every drawn file: capital letters and underscores.</param>
/// <param name="Purpose">What it shows, for people.</param>
/// <param name="Use">What a machine may do with it.</param>
/// <param name="Colour">Colour on white as "#rrggbb".</param>
/// <param name="Pen">The nearest of the numbered colours of DXF: 1 red, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black, 8 grey, 30 orange.</param>
/// <param name="IsDashed">Whether lines are broken: 10 mm drawn, 5 mm free.</param>
public sealed record DrawingLayer(string Name, string Purpose, LayerUse Use, string Colour, int Pen, bool IsDashed)
{
    /// <summary>Width of the drawn line in hundredths of a millimetre; the true line is the middle of it.</summary>
    public int LineWidth => Use == LayerUse.Cut ? 35 : 25;
}
