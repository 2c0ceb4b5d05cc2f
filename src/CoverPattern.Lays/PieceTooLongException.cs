using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>A piece is longer than a lay may be, in every turn it may take.</summary>
public sealed class PieceTooLongException : WorkException
{
    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="piece">Label of the piece.</param>
    /// <param name="pieceMm">Least length it takes along the roll, millimetres.</param>
    /// <param name="roomMm">Longest that a lay may be without its end allowances, millimetres.</param>
    public PieceTooLongException(string cloth, string piece, double pieceMm, double roomMm)
        : base(
            piece,
            FormattableString.Invariant($"Piece {piece} needs {pieceMm:F1} mm along the roll; a lay of cloth {cloth} has {roomMm:F1} mm on the table between its end allowances. Take a longer table, allow other turns, or cut the piece in parts."))
    {
    }
}
