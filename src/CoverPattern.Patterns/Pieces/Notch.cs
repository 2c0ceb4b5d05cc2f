using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A mark at the edge of a piece that meets the like mark of the partner edge.</summary>
/// <param name="Run">Index of the edge run it belongs to.</param>
/// <param name="AtMm">Distance along the sew line from the run's first corner, millimetres.</param>
/// <param name="Form">How it is made.</param>
/// <param name="OnSewLine">Its place on the sew line.</param>
/// <param name="Outer">Outer end of the stroke: on the cut line, square to the sew line.</param>
/// <param name="Inner">Inner end of the stroke, inside the allowance (on an edge without allowance: inside the piece).</param>
public sealed record Notch(int Run, double AtMm, NotchForm Form, Point2 OnSewLine, Point2 Outer, Point2 Inner);
