using CoverPattern.Geometry;

namespace CoverPattern.Files.Exchange;

/// <summary>A drill hole of a piece in an exchange file.</summary>
/// <param name="At">Its middle, millimetres.</param>
/// <param name="DiameterMm">Its diameter, millimetres; 0 when not told.</param>
public sealed record ExchangeDrill(Point2 At, double DiameterMm);
