using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>A piece is wider than the usable width of its cloth in every turn it may take.</summary>
public sealed class RollTooNarrowException : WorkException
{
    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="piece">Label of the piece.</param>
    /// <param name="pieceMm">Least width the piece takes across the roll, millimetres.</param>
    /// <param name="usableMm">Usable width of the roll, millimetres.</param>
    public RollTooNarrowException(string cloth, string piece, double pieceMm, double usableMm)
        : base(
            piece,
            FormattableString.Invariant($"Piece {piece} needs {pieceMm:F1} mm across the roll; cloth {cloth} has {usableMm:F1} mm of usable width. Take a wider roll, allow other turns, or choose a narrower seam."))
    {
        Cloth = cloth;
        PieceMm = pieceMm;
        UsableMm = usableMm;
    }

    /// <summary>Name of the cloth.</summary>
    public string Cloth { get; }

    /// <summary>Least width the piece takes across the roll, millimetres.</summary>
    public double PieceMm { get; }

    /// <summary>Usable width of the roll, millimetres.</summary>
    public double UsableMm { get; }
}
