using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Tells pieces that stand at the same place on several covers.</summary>
internal static class Covers
{
    /// <summary>The part of a label that names the place on the cover, such as "P1.07" of "C03 P1.07".</summary>
    public static string PlaceOf(string piece) => piece[(piece.LastIndexOf(' ') + 1)..];

    /// <summary>The part of a label that names the cover, such as "C03"; empty when the job has one cover.</summary>
    public static string CoverOf(string piece) => piece[..Math.Max(piece.LastIndexOf(' '), 0)];

    /// <summary>The pieces of the first cover when all covers are alike in shapes and seams; else all pieces.</summary>
    public static ImmutableArray<Piece> Different(PieceSet set)
    {
        var covers = set.Pieces.GroupBy(piece => CoverOf(piece.Label), StringComparer.Ordinal).Select(cover => cover.ToArray()).ToArray();
        return covers.Length > 0 && covers.All(cover => cover.Length == covers[0].Length && cover.Zip(covers[0]).All(pair => Alike(pair.First, pair.Second)))
            ? [.. covers[0]]
            : set.Pieces;
    }

    private static bool Alike(Piece left, Piece right) =>
        PlaceOf(left.Label) == PlaceOf(right.Label)
        && left.Pattern == right.Pattern
        && left.Mirrored == right.Mirrored
        && left.Runs.Select(InPlace).SequenceEqual(right.Runs.Select(InPlace));

    private static PieceRun InPlace(PieceRun run) =>
        run.Partner is null ? run : run with { Partner = run.Partner with { Piece = PlaceOf(run.Partner.Piece) } };
}
