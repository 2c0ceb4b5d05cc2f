using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>What to measure before the last seam is sewn.</summary>
internal static class ClosingSection
{
    public static void Write(PageWriter page, Result result)
    {
        if (result.Job.Seam.Closing is not { } wish)
        {
            return;
        }

        var ruler = Ruler.Of(result.Job);
        page.Line("h2", "The closing seam");
        page.Line("p", $"Sewn last, with both ends open: {LabelRanges.List(ClosingFields.Seams(result))}, from the finished edge below {ClosingSeam.From(result.Shell, result.Cut)} up to ring {Printed.Count(ClosingSeam.LastRing(result.Shell, wish))} of hubs, over the struts {string.Join(", ", ClosingSeam.Struts(result.Shell, result.Cut))}. Its sides have {ruler.Allowance(wish.Allowance.Millimetres)} {ruler.Unit} of allowance; its notches stay.");
        page.Line("p", $"Before it is sewn, measure along the cloth from one sew line of it to the other, all round each ring. Too long: sew further in, half of the error on each side; too short: as much further out. More than {ruler.WithUnit(ClosingSeam.AllowedError)} either way: look for a wrong seam first (common practice, no source).");
        page.Table(
            "numbers",
            ["Where", "Should be " + ruler.Unit, "Allowed error " + ruler.Unit, "Measured " + ruler.Unit, "Each side in or out " + ruler.Unit],
            ClosingSeam.Girths(result.Shell, wish).Select(girth => ($"Ring {Printed.Count(girth.Ring)} of hubs", girth.LengthMm))
                .Prepend(("Finished edge", result.Estimate.PerCover.HemMm))
                .Select(row => new[] { row.Item1, ruler.Of(row.Item2), "\u00b1" + ruler.Of(ClosingSeam.AllowedError), string.Empty, string.Empty }));
        page.Table("numbers", [.. Corrections(ruler).Select((column, i) => i == 0 ? "Girth too long (too short) by " + ruler.Unit : column.Error)],
            [[.. Corrections(ruler).Select((column, i) => i == 0 ? "Each side in (out) by " + ruler.Unit : column.Side)]]);
    }

    /// <summary>What each side takes in for round errors up to the allowed one; the first column is for words.</summary>
    private static IEnumerable<(string Error, string Side)> Corrections(Ruler ruler)
    {
        var step = 2 * ruler.StepMm;
        return Enumerable.Range(0, 1 + (int)Math.Floor(ClosingSeam.AllowedError / step)).Select(i => (ruler.Of(i * step), ruler.Of(ClosingSeam.TakenIn * i * step)));
    }
}
