namespace CoverPattern.Lays.Sheets;

/// <summary>On which paper a large drawing is printed in parts.</summary>
/// <param name="Sheet">The paper, either way up.</param>
/// <param name="MarginMm">Border that the printer leaves white, millimetres.</param>
/// <param name="OverlapMm">What two neighbours show alike, millimetres.</param>
public sealed record TileWish(SheetSize Sheet, double MarginMm = 10, double OverlapMm = 10)
{
    /// <summary>Least width of what a sheet adds, millimetres: the test square and its label must have room.</summary>
    public const double LeastStepMm = 110;

    /// <summary>Whether a sheet has room for the test square beside margins and overlap.</summary>
    public bool HasRoom => System.Math.Min(Sheet.WidthMm, Sheet.HeightMm) - (2 * MarginMm) - OverlapMm >= LeastStepMm;
}
