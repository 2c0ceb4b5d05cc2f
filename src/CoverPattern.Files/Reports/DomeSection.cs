using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>The cover in three views, and spread out.</summary>
internal static class DomeSection
{
    public static void Write(PageWriter page, Result result)
    {
        page.Line("h2", "The cover", ("class", "page"));
        page.Line("p", $"Lines are the edges of the cloth over the struts; only what faces the onlooker is drawn; the skirt is grey. At each base hub stands its raise over the lowest base hub, hub centre to hub centre, in {Ruler.Of(result.Job).Unit}. {Naming(result)} A number alone is the place in its row, where there is no room for more.{Marks(CoverMarks.Of(result))}");
        DomeView[] views = [.. Views(result)];
        var spread = SpreadPlan.Draw(result);
        foreach (var view in views)
        {
            Write(page, view);
        }

        var seen = views.SelectMany(view => view.Seen).ToHashSet(StringComparer.Ordinal);
        var hidden = spread.Seen.Where(label => !seen.Contains(label)).ToArray();
        if (hidden.Length > 0)
        {
            page.Line("p", $"Behind, and in none of the three views: {LabelRanges.List(hidden)}.", ("class", "small"));
        }

        Write(page, spread);
    }

    /// <summary>Plan, front, side.</summary>
    public static ImmutableArray<DomeView> Views(Result result) =>
        [.. new[] { DomeDirection.Plan, DomeDirection.Front, DomeDirection.Side }.Select(direction => DomeDrawing.Draw(result, direction))];

    /// <summary>How facets are named, and which pieces cover them: single facets bear their numbers, others stand in the spread plan.</summary>
    private static string Naming(Result result)
    {
        var isSingle = result.Pieces.Patterns.Where(pattern => !pattern.Facets.IsEmpty && pattern.Kind != PieceKind.Strip).Select(pattern => pattern.Kind == PieceKind.Facet).ToHashSet();
        const string Place = "row 1 from the deck up, seventh place counter-clockwise seen from above";
        return !isSingle.Contains(false) ? $"A facet F1.07 is covered by the piece P1.07: {Place}."
            : !isSingle.Contains(true) ? $"A facet F1.07 is in {Place}; the drawing of all pieces spread out shows which piece covers it."
            : $"A facet F1.07, {Place}, is covered by the piece P1.07 where it is a piece by itself; the drawing of all pieces spread out shows the others.";
    }

    /// <summary>What stands for openings and zips, as far as the cover has them.</summary>
    private static string Marks(CoverMarks marks)
    {
        bool Has(string style) => marks.Lines.Any(line => line.Style == style);
        return (marks.Voids.IsEmpty ? string.Empty : " Each opening bears its name inside its edge.")
            + (marks.Lines.Any(line => line.IsZip) || Has(CoverLine.Slit) ? " Zips in seams and round openings are lines of dots, slits lines of short strokes." : string.Empty)
            + (Has(CoverLine.Mark) ? " Thin broken lines show where hoods and flaps are sewn on, and the holes of pipes." : string.Empty);
    }

    private static void Write(PageWriter page, DomeView view)
    {
        page.Open("div", ("class", "view"));
        page.Line("h3", view.Figure.Name);
        FigureSvg.Write(page, view.Figure);
        if (!view.Unlabelled.IsEmpty)
        {
            page.Line("p", $"Too small here for their names: {LabelRanges.List(view.Unlabelled)}.", ("class", "small"));
        }

        page.Close();
    }
}
