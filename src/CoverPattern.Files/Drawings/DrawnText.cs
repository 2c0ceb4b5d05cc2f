using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>One line of writing.</summary>
/// <param name="Layer">What it is for.</param>
/// <param name="Text">Any letters, no line breaks.</param>
/// <param name="At">Where it stands, millimetres.</param>
/// <param name="Height">Height of its capitals, millimetres.</param>
/// <param name="TurnDegrees">Turn about the point, degrees counter-clockwise.</param>
/// <param name="Anchor">Which part stands at the point.</param>
public sealed record DrawnText(DrawingLayer Layer, string Text, Point2 At, double Height, double TurnDegrees, TextAnchor Anchor);
