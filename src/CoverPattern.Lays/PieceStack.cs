using System.Collections.Immutable;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Pieces that one cut through all plies gives; on a single ply one piece.</summary>
/// <param name="Pieces">Of one pattern, the top one first.</param>
/// <param name="Grade">Which flaws all of them bear.</param>
internal sealed record PieceStack(ImmutableArray<Piece> Pieces, int Grade)
{
    public Piece Top => Pieces[0];
}
