using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>An annotation of a piece in an exchange file.</summary>
/// <param name="At">Where it stands, millimetres.</param>
/// <param name="Text">What it says.</param>
public sealed record ExchangeNote(Point2 At, string Text);
