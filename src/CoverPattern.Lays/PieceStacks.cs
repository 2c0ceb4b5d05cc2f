using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Shares pieces out over plies.</summary>
internal static class PieceStacks
{
    /// <summary>Stacks of as many pieces as there are plies, and apart from them what is left over, on a single ply.</summary>
    /// <param name="wish">Plies, how they lie, and grades.</param>
    /// <param name="cloth">Name of the cloth, for messages.</param>
    /// <param name="patterns">Patterns by their ids.</param>
    /// <param name="pieces">Pieces of one cloth in order of cover and label.</param>
    /// <returns>Number of plies, and stacks in the order of their top pieces; sets without stacks are left out.</returns>
    /// <exception cref="HandsUnequalException">Plies are to lie face to face, and a pattern is not needed equally in both hands.</exception>
    public static ImmutableArray<(int Plies, ImmutableArray<PieceStack> Stacks)> Of(
        LayWish wish, string cloth, Dictionary<string, Pattern> patterns, Piece[] pieces)
    {
        var graded = pieces.Select(piece => new PieceStack([piece], PieceGrades.Of(wish, piece, patterns[piece.Pattern]))).ToArray();
        if (wish.Plies == 1)
        {
            return pieces.Length == 0 ? [] : [(1, [.. graded])];
        }

        var stacks = wish.Spread == PlySpread.FaceToFace ? FaceToFace(wish, cloth, graded) : OneWay(wish, graded);
        var order = pieces.Select((piece, i) => (piece.Label, i)).ToDictionary(entry => entry.Label, entry => entry.i, StringComparer.Ordinal);
        var stacked = stacks.SelectMany(stack => stack.Pieces).Select(piece => piece.Label).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. new[] { (wish.Plies, Stacks: stacks.OrderBy(stack => order[stack.Top.Label]).ToImmutableArray()), (1, [.. graded.Where(single => !stacked.Contains(single.Top.Label))]) }
                .Where(set => !set.Stacks.IsEmpty),
        ];
    }

    /// <summary>Every ply gives the same: of each kind as many stacks as there are full ones. With as many covers as plies each ply is a cover.</summary>
    private static IEnumerable<PieceStack> OneWay(LayWish wish, PieceStack[] graded) =>
        graded.GroupBy(single => (single.Top.Pattern, single.Top.Mirrored, single.Grade))
            .SelectMany(kind => Stacked([.. kind.Select(single => single.Top)], wish.Plies, kind.Key.Grade));

    private static IEnumerable<PieceStack> FaceToFace(LayWish wish, string cloth, PieceStack[] graded)
    {
        foreach (var kind in graded.GroupBy(single => (single.Top.Pattern, single.Grade)))
        {
            var hands = kind.Select(single => single.Top).ToLookup(piece => piece.Mirrored);
            if (hands[true].Count() != hands[false].Count())
            {
                throw new HandsUnequalException(cloth, kind.Key.Pattern, hands[false].Count(), hands[true].Count());
            }

            var drawn = Stacked([.. hands[false]], wish.Plies / 2, kind.Key.Grade);
            var twins = Stacked([.. hands[true]], wish.Plies / 2, kind.Key.Grade);
            foreach (var (right, left) in drawn.Zip(twins))
            {
                yield return right with { Pieces = [.. right.Pieces.Zip(left.Pieces).SelectMany(pair => new[] { pair.First, pair.Second })] };
            }
        }
    }

    private static IEnumerable<PieceStack> Stacked(Piece[] kind, int plies, int grade)
    {
        var full = kind.Length / plies;
        return Enumerable.Range(0, full).Select(stack => new PieceStack([.. Enumerable.Range(0, plies).Select(ply => kind[(ply * full) + stack])], grade));
    }
}
