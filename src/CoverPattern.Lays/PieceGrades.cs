using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Which flaws a piece bears.</summary>
internal static class PieceGrades
{
    /// <summary>The grade of a piece: 0 unless the job says more.</summary>
    public static int Of(LayWish wish, Piece piece, Pattern pattern) =>
        wish.Grades.LastOrDefault(grade => grade.Pieces.Any(name => Names(name, piece, pattern)))?.Grade ?? 0;

    /// <summary>Words of the job that name no piece and no kind of the set.</summary>
    public static ImmutableArray<string> Unknown(LayWish wish, PieceSet set)
    {
        var labels = set.Pieces.SelectMany(piece => new[] { piece.Label, Short(piece) }).ToHashSet(StringComparer.Ordinal);
        IEnumerable<string> kinds = Enum.GetValues<PieceKind>().Select(WordOf);
        return [.. wish.Grades.SelectMany(grade => grade.Pieces).Where(name => !labels.Contains(name) && !kinds.Contains(name, StringComparer.Ordinal))];
    }

    private static bool Names(string name, Piece piece, Pattern pattern) =>
        string.Equals(name, piece.Label, StringComparison.Ordinal)
        || string.Equals(name, Short(piece), StringComparison.Ordinal)
        || string.Equals(name, WordOf(pattern.Kind), StringComparison.Ordinal);

    private static string Short(Piece piece) => piece.Label[(piece.Label.LastIndexOf(' ') + 1)..];

    private static string WordOf(PieceKind kind)
    {
        var name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
