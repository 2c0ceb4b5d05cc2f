namespace CoverPattern.Lays;

/// <summary>A pattern that fits the usable width of its cloth in no allowed turn.</summary>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="Piece">Label of the first piece of the pattern.</param>
/// <param name="PieceMm">Least width it takes across the roll, millimetres.</param>
/// <param name="UsableMm">Usable width of the roll, millimetres.</param>
public sealed record TooWidePiece(string Cloth, string Piece, double PieceMm, double UsableMm);
