using System;
using System.Linq;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>How many pieces of a pattern are cut as it is drawn, and how many turned over.</summary>
internal static class CutCount
{
    /// <summary>Pieces of a pattern that are cut mirrored, over all covers.</summary>
    public static int Mirrored(Pattern pattern, PieceSet set) => set.Pieces.Count(piece => piece.Mirrored && piece.Pattern == pattern.Id);

    /// <summary>The count in words, such as "10 x", "10 x, 5 of them mirrored" or "5 x, all mirrored".</summary>
    public static string Of(Pattern pattern, PieceSet set)
    {
        var mirrored = Mirrored(pattern, set);
        var times = FormattableString.Invariant($"{pattern.Quantity} x");
        return mirrored switch
        {
            0 => times,
            _ when mirrored == pattern.Quantity => times + ", all mirrored",
            _ => FormattableString.Invariant($"{times}, {mirrored} of them mirrored"),
        };
    }
}
