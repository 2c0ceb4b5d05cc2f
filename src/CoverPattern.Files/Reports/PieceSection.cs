using System;
using System.Linq;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Reports;

/// <summary>Every piece with the pieces it is sewn to.</summary>
internal static class PieceSection
{
    // From here on the table stands in two columns: own choice, for a report that can still be carried.
    private const int Many = 150;

    public static void Write(PageWriter page, Result result)
    {
        var set = result.Pieces;
        var pieces = Covers.Different(set);
        var facts = new PatternFacts(set, new SideLengths(set, Ruler.Of(result.Job)));
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        page.Line("h2", "Pieces and their seams");
        page.Line("p", "Edges are named by the corners of the pattern. S017 is the seam; behind the arrow stand the partner and its edge.");
        if (pieces.Length < set.Pieces.Length)
        {
            page.Line("p", $"All {Printed.Count(result.Job.Covers)} covers are alike; on the cloth each label begins with its cover, {Covers.CoverOf(set.Pieces[0].Label)} to {Covers.CoverOf(set.Pieces[^1].Label)}.");
        }

        page.Open("div", ("class", pieces.Length > Many ? "seams dense" : "seams"));
        page.Table("seams wide", ["Piece", "Pattern", "Edges"], pieces.Select(piece => new[]
        {
            Covers.PlaceOf(piece.Label),
            piece.Pattern + (piece.Mirrored ? " mirrored" : string.Empty),
            string.Join("; ", piece.Runs.Select((run, i) => $"{PatternFacts.Name(patterns[piece.Pattern], i)}: {facts.Joined(run)}")),
        }));
        page.Close();
    }
}
