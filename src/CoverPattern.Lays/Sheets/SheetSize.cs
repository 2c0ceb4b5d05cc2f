namespace CoverPattern.Lays.Sheets;

/// <summary>A sheet of paper.</summary>
/// <param name="WidthMm">From left to right, millimetres.</param>
/// <param name="HeightMm">From bottom to top, millimetres.</param>
public readonly record struct SheetSize(double WidthMm, double HeightMm)
{
    /// <summary>The same sheet on its other side.</summary>
    public SheetSize Turned => new(HeightMm, WidthMm);
}
