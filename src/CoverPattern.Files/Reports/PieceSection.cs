using System;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Every piece with the pieces it is sewn to.</summary>
internal static class PieceSection
{
    public static void Write(PageWriter page, Result result)
    {
        var set = result.Pieces;
        var pieces = Covers.Different(set);
        var isFirstOnly = pieces.Length < set.Pieces.Length;
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var patternOf = set.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        page.Line("h2", "Pieces and their seams");
        page.Line("p", "Edges are named by the corners of the pattern. S017 is the seam; behind the arrow stand the partner and its edge.");
        if (isFirstOnly)
        {
            page.Line("p", $"All {Printed.Count(result.Job.Covers)} covers are alike; on the cloth each label begins with its cover, {Covers.CoverOf(set.Pieces[0].Label)} to {Covers.CoverOf(set.Pieces[^1].Label)}.");
        }

        page.Table("wide", ["Piece", "Pattern", "Edges"], pieces.Select(piece => new[]
        {
            Covers.PlaceOf(piece.Label),
            piece.Pattern + (piece.Mirrored ? " mirrored" : string.Empty),
            string.Join("; ", piece.Runs.Select((run, i) => $"{Words.Edge(patterns[piece.Pattern].AllRuns[i])}: {Joined(run)}")),
        }));

        string Joined(PieceRun run) => run.Partner is null
            ? Printed.Word(run.Role)
            : $"{run.Arc} \u2192 {Covers.PlaceOf(run.Partner.Piece)} {Words.Edge(patternOf[run.Partner.Piece].AllRuns[run.Partner.Run])}";
    }
}
