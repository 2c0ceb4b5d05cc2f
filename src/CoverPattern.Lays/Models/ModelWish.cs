using CoverPattern.Lays.Sheets;

namespace CoverPattern.Lays.Models;

/// <summary>How a paper model is made.</summary>
/// <param name="Scale">How many times smaller than the cover it is, such as 10; null for 10 or, where a piece would not go on a sheet, the next round number at which all do.</param>
/// <param name="Sheet">The paper, upright.</param>
/// <param name="MarginMm">Border that the printer leaves white, millimetres.</param>
public sealed record ModelWish(double? Scale, SheetSize Sheet, double MarginMm = 10);
