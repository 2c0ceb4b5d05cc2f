using System;
using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Joins parts of a cover that were made by themselves - liner, roof screen - to the set of the order.</summary>
public static class JoinedSets
{
    /// <summary>Both sets as one, the part's pieces behind those of their cover.</summary>
    /// <param name="cover">Patterns and pieces of the covers.</param>
    /// <param name="part">Those of the parts, under labels of their own.</param>
    /// <param name="covers">Number of equal covers.</param>
    public static PieceSet Join(PieceSet cover, PieceSet part, int covers)
    {
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(part);
        var (own, inner) = (cover.Pieces.Length / covers, part.Pieces.Length / covers);
        return cover with
        {
            Patterns = [.. cover.Patterns, .. part.Patterns],
            Pieces = [.. Enumerable.Range(0, covers).SelectMany(i => cover.Pieces.Skip(i * own).Take(own).Concat(part.Pieces.Skip(i * inner).Take(inner)))],
            Ties = [.. cover.Ties, .. part.Ties],
            ClipPatches = [.. cover.ClipPatches, .. part.ClipPatches],
        };
    }
}
