using System;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Every pattern: drawing, edges, setting out by tape, pieces.</summary>
internal static class PatternSection
{
    public static void Write(PageWriter page, Result result)
    {
        var set = result.Pieces;
        var (lengths, scale) = (new SideLengths(set), PatternFigure.Scale(set.Patterns));
        page.Line("h2", "Patterns");
        page.Line("p", FormattableString.Invariant(
            $"Scale about 1:{scale:0} when printed on A4. Thick line: cut. Dashes: sew line. Dash and dot: fold over a strut, uncut. Bars across the allowance: notches, drawn longer than they are cut. Arrow: grain, along the roll. Small slanted numbers: corners of the sew line. All lengths in mm along the sew line; the word such as c07 is the class of the edge: edges joined with each other are of one class and carry the same length. Places of notches are all measured from the corner named."));
        var users = set.Pieces.ToLookup(piece => piece.Pattern, StringComparer.Ordinal);
        var isFirstOnly = Covers.Different(set).Length < set.Pieces.Length;
        foreach (var pattern in set.Patterns)
        {
            page.Open("section", ("class", "pattern"), ("id", "pattern-" + pattern.Id));
            page.Open("div", ("class", "drawing"));
            FigureSvg.Write(page, PatternFigure.Draw(pattern, lengths, scale));
            page.Close();
            page.Open("div", ("class", "facts"));
            Facts(page, pattern, lengths);
            page.Close();
            page.Close();
            page.Line("p", Users([.. users[pattern.Id]], isFirstOnly), ("class", "users"));
        }
    }

    private static void Facts(PageWriter page, Pattern pattern, SideLengths lengths)
    {
        page.Line("h3", FormattableString.Invariant($"{pattern.Id}: cut {pattern.Quantity}"));
        page.Line("p", pattern.Cloth);
        page.Table("edges", ["Edge", "Is", "Class", "Length", "Allow.", "Notches at"], pattern.AllRuns.Select((run, i) => new[]
        {
            Words.Edge(run), Words.Role(run), run.ArcClass, lengths.Of(run), Printed.Number(run.AllowanceMm, 1), Notches(pattern, i, run),
        }));
        page.Line("p", "By tape, on the sew line; allowances go outside it:");
        page.Open("ul");
        foreach (var step in TapeSetting.Steps(pattern, lengths))
        {
            page.Line("li", step);
        }

        page.Close();
        foreach (var drill in pattern.Drills)
        {
            page.Line("p", "Drawn mark, never pierced: " + drill.Purpose);
        }
    }

    private static string Notches(Pattern pattern, int index, EdgeRun run)
    {
        var notches = pattern.Notches.Where(notch => notch.Run == index).ToArray();
        return notches.Length == 0
            ? "none"
            : $"{string.Join(", ", notches.Select(notch => Printed.Mm(notch.AtMm)))} from {(run.IsClosed ? "the right" : Printed.Count(run.From + 1))}, {string.Join(" and ", notches.Select(notch => Printed.Word(notch.Form)).Distinct())}";
    }

    private static string Users(Piece[] pieces, bool isFirstOnly)
    {
        var shown = isFirstOnly ? pieces.Where(piece => Covers.CoverOf(piece.Label) == Covers.CoverOf(pieces[0].Label)) : pieces;
        var labels = shown.Select(piece => (isFirstOnly ? Covers.PlaceOf(piece.Label) : piece.Label) + (piece.Mirrored ? " (mirrored)" : string.Empty));
        return (isFirstOnly ? "Pieces of each cover: " : "Pieces: ") + string.Join(", ", labels);
    }
}
