namespace CoverPattern.Lays;

/// <summary>Where one piece lies: its pattern mirrored first, then turned, then moved.</summary>
/// <param name="Piece">Label of the piece.</param>
/// <param name="X">Shift along the roll, millimetres, on the grid.</param>
/// <param name="Y">Shift across the roll, millimetres, on the grid.</param>
/// <param name="TurnDegrees">Turn, degrees counter-clockwise.</param>
/// <param name="Mirrored">Whether the pattern's y changes sign first: true for a right-handed piece on cloth that lies face down.</param>
public sealed record Placement(string Piece, double X, double Y, double TurnDegrees, bool Mirrored);
