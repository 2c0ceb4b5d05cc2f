using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>Writes vents.html: the vent sheet, for the shop alone. What it says of the flow stands in no paper for customers.</summary>
public static class VentPaper
{
    /// <summary>Name of the file.</summary>
    public const string Name = "vents.html";

    /// <summary>Heading of what is an estimate.</summary>
    internal const string Inner = "Inner figure: air by its own warmth";

    private const double LitresPerCubicMetre = 1000;
    private const double SecondsPerHour = 3600;

    /// <param name="job">The job; it has vents.</param>
    /// <param name="sheet">What they measure.</param>
    /// <returns>The file in UTF-8 with "\n" line ends.</returns>
    public static byte[] Write(Job job, VentSheet sheet)
    {
        System.ArgumentNullException.ThrowIfNull(job);
        System.ArgumentNullException.ThrowIfNull(sheet);
        var (title, ruler) = ("Vent sheet: " + HeadSection.Title(job), Ruler.Of(job));
        using var page = new PageWriter();
        page.Begin(title, ReportStyle.Sheet);
        page.Line("h1", title);
        page.Line("p", System.FormattableString.Invariant($"{job.Date:yyyy-MM-dd}. For the shop alone, not for the customer. One cover."));
        page.Table("wide", ["Vent", "Where", "Open m\u00b2", "Screen", "Free m\u00b2", "Middle above the deck " + ruler.Unit], Rows("low", sheet.Low, ruler).Concat(Rows("high", sheet.High, ruler)));
        page.Table("facts", ["What", "Value", "Made of"],
        [
            ["Free area low", Printed.Number(sheet.LowM2, 3) + " m\u00b2", string.Join(", ", sheet.Low.Select(vent => vent.Label))],
            ["Free area high", Printed.Number(sheet.HighM2, 3) + " m\u00b2", string.Join(", ", sheet.High.Select(vent => vent.Label))],
            ["Height between", ruler.WithUnit(sheet.HeightMm), "middle to middle, each weighed with its free area"],
            ["Open share of screens", Printed.Number(100 * job.Vents!.MeshShare, 0) + " %", "vents.meshOpen; ask the maker of the mesh"],
        ]);
        page.Line("p", "Whether this is enough for people, stove or goods is for local codes and somebody licensed to say. An open vent does not make a fire, stove or heater inside safe: carbon monoxide kills, have an alarm.");
        if (job.Vents.Celsius is { } air)
        {
            Flow(page, sheet, air);
        }

        return page.End();
    }

    private static IEnumerable<string[]> Rows(string where, ImmutableArray<VentArea> vents, Ruler ruler) => vents.Select(vent => new[]
    {
        vent.Label, where, Printed.Number(vent.OpenMm2 / 1e6, 3), vent.HasScreen ? "yes" : "no", Printed.Number(vent.FreeMm2 / 1e6, 3), ruler.Of(vent.MiddleMm),
    });

    private static void Flow(PageWriter page, VentSheet sheet, (int Inside, int Outside) air)
    {
        var flow = StackFlow.CubicMetresPerSecond((sheet.LowM2, sheet.HighM2), sheet.HeightMm / 1000, (air.Inside, air.Outside));
        page.Line("h2", Inner);
        page.Line("p", $"About {Printed.Number(flow * LitresPerCubicMetre, 0)} litres a second ({Printed.Number(flow * SecondsPerHour, 0)} m\u00b3 an hour) at {Printed.Count(air.Inside)} \u00b0C inside and {Printed.Count(air.Outside)} \u00b0C outside. Never quote it.");
        page.Line("p", $"Q = Cd A \u221a(2 g H (Ti - To) / Ti) with Cd {Printed.Number(StackFlow.Coefficient, 2)}, A = A1 A2 / \u221a(A1\u00b2 + A2\u00b2), temperatures in kelvin. It holds without wind, with all doors shut, air evenly warm inside and vents wide open; wind can double it or turn it round. Another rule of thumb differs by a few per cent; true flows differ by half and more.", ("class", "small"));
    }
}
