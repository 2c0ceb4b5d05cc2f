using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Pieces are wider than the usable width of their cloth in every turn they may take.</summary>
/// <param name="pieces">All of them, one a pattern; at least one.</param>
public sealed class RollTooNarrowException(ImmutableArray<TooWidePiece> pieces) : WorkException(pieces[0].Piece, Told(pieces))
{
    // So many are named one by one.
    private const int MostNamed = 12;

    /// <summary>The pieces, one a pattern, in order of the job's cloths.</summary>
    public ImmutableArray<TooWidePiece> Pieces { get; } = pieces;

    private static string Told(ImmutableArray<TooWidePiece> pieces) =>
        string.Join(' ', pieces.GroupBy(piece => piece.Cloth, StringComparer.Ordinal).Select(cloth => OfCloth([.. cloth]))) + " Take a wider roll, allow other turns, or choose a narrower seam.";

    private static string OfCloth(TooWidePiece[] ofACloth)
    {
        var (first, more) = (ofACloth[0], ofACloth.Length - MostNamed);
        var names = string.Join(", ", ofACloth.Take(MostNamed).Select(piece => piece.Piece)) + (more > 0 ? FormattableString.Invariant($" and the first of {more} more patterns") : string.Empty);
        var need = FormattableString.Invariant($"{(ofACloth.Length == 1 ? $"Piece {names} needs" : $"Pieces {names} need up to")} {ofACloth.Max(piece => piece.PieceMm):F1} mm across the roll");
        return FormattableString.Invariant($"{need}; cloth {first.Cloth} has {first.UsableMm:F1} mm of usable width.");
    }
}
