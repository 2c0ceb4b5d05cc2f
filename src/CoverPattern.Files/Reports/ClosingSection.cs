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

        page.Line("h2", "The closing seam");
        page.Line("p", $"Sewn last, with both ends open: {string.Join(", ", ClosingFields.Seams(result))}, from the finished edge below {ClosingSeam.From(result.Shell, result.Cut)} up to ring {Printed.Count(ClosingSeam.LastRing(result.Shell, wish))} of hubs, over the struts {string.Join(", ", ClosingSeam.Struts(result.Shell, result.Cut))}. Its sides have {Printed.Mm(wish.Allowance.Millimetres)} mm of allowance; its notches stay.");
        page.Line("p", $"Before it is sewn, measure along the cloth from one sew line of it to the other, all round each ring. For each millimetre too long sew {Printed.Number(ClosingSeam.TakenIn, 1)} mm further in on each side, for each millimetre too short as much further out. More than {Printed.Mm(ClosingSeam.AllowedError)} mm either way: look for a wrong seam first (common practice, no source).");
        page.Table(
            "numbers",
            ["Where", "Should be mm", "Allowed error mm", "Measured mm"],
            ClosingSeam.Girths(result.Shell, wish).Select(girth => new[] { $"Ring {Printed.Count(girth.Ring)} of hubs", Printed.Mm(girth.LengthMm), "\u00b1" + Printed.Mm(ClosingSeam.AllowedError), string.Empty })
                .Prepend(["Finished edge", Printed.Mm(result.Estimate.PerCover.HemMm), "\u00b1" + Printed.Mm(ClosingSeam.AllowedError), string.Empty]));
    }
}
