using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>A notch of a piece in an exchange file.</summary>
/// <param name="At">Its place on the piece's boundary, millimetres.</param>
/// <param name="Kind">Its form.</param>
/// <param name="DepthMm">How deep it goes, millimetres.</param>
/// <param name="WidthMm">How wide it is at the edge, millimetres; 0 for a slit.</param>
/// <param name="AngleDegrees">Direction into the piece, degrees counter-clockwise from x.</param>
public sealed record ExchangeNotch(Point2 At, ExchangeNotchKind Kind, double DepthMm, double WidthMm, double AngleDegrees);
