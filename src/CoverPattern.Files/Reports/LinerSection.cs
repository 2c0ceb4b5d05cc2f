using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>What hangs below the frame and stands between its struts.</summary>
internal static class LinerSection
{
    private const double SquareMillimetresPerSquareMetre = 1e6;

    public static void Write(PageWriter page, Result result)
    {
        var (job, ruler) = (result.Job, Ruler.Of(result.Job));
        if (job.Liner is { } wish && result.Liner is { Cut: { } cut } liner)
        {
            page.Line("h2", "Liner");
            page.Line("p", $"All its labels begin with {Liner.Letter}: {Liner.Letter}P1.07 hangs below facet F1.07. It is drawn seen from outside like everything else. Tie it at every hub; the marks in the corners of its pieces are its ties.");
            page.Table("facts", ["What", "Value", "Made of"],
            [
                ["Cloth", wish.Cloth, "its own"],
                ["Facets", ruler.WithUnit(-liner.StandOffMm), $"inside the planes of the struts' axes; gap {wish.Gap.Typed} to the cover at least, and never among tubes and hubs"],
                ["Area", Printed.Number(cut.Patches.Sum(patch => patch.Area) / SquareMillimetresPerSquareMetre, 2) + " m\u00b2", "finished, without allowances; one cover"],
                ["Finished edge", ruler.WithUnit(wish.Hem.Millimetres), "above the deck, open, so that water that runs down the cover's inside gets out"],
                ["Parts", wish.RoofRow is { } row ? "wall and roof" : "one", wish.RoofRow is { } from ? $"the roof begins with row {Printed.Count(from)} and is zipped to the wall, one zip a strut" : "sewn all round"],
                ["Holes", wish.Margin.Typed, "larger all round than the cover's; for stove pipes 20 mm beyond the clear distance"],
            ]);
        }

        if (job.Insulation is { } pads)
        {
            page.Line("h2", "Insulation");
            page.Line("p", $"One pad a facet of {pads.Cloth}, A1.07 in facet F1.07, between the struts and tucked {pads.Tuck.Typed} behind their tubes: {Printed.Count(result.Pieces.Patterns.Where(pattern => pattern.Kind == PieceKind.Pad).Sum(pattern => pattern.Quantity))} pads in all. Pads never lie over a strut; facets with openings and those within a stove pipe's clear distance have none (see the notices).");
        }
    }
}
