using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Zips, bindings and tapes as they are bought, ends added and rounded up to what is sold.</summary>
internal static class NotionSection
{
    public static void Write(PageWriter page, Result result)
    {
        var (notions, sold, ruler) = (result.Estimate.Total.Notions, result.Job.Notions, Ruler.Of(result.Job));
        if (notions.IsEmpty)
        {
            return;
        }

        page.Line("h3", "Zips, bindings and tapes to buy");
        page.Table("numbers wide", ["What", "Pieces", "Sewn", "To buy", "How"], notions.Select(notion => Row(notion, ruler)));
        page.Line(
            "p",
            $"All covers. Zips: {sold.ZipEnds.Typed} beyond the seam for stops and ends, in steps of {sold.ZipStep.Typed}; the rest by {sold.TapeStep.Typed}, bindings and webbing with {sold.TapeEnds.Typed} for the ends of each (section notions of the job). Both sides of a zip are one line of the cover and equally long.",
            ("class", "small"));
    }

    private static string[] Row(NotionEstimate notion, Ruler ruler) =>
    [
        Name(notion) + (notion.WidthMm > 0 ? ", " + ruler.WithUnit(notion.WidthMm) + " wide" : string.Empty),
        Printed.Count(notion.Count),
        ruler.WithUnit(notion.LengthMm),
        ruler.WithUnit(notion.BuyMm),
        notion.Sizes.IsEmpty ? "by the running length" : string.Join(", ", Sizes(notion, ruler)),
    ];

    private static IEnumerable<string> Sizes(NotionEstimate notion, Ruler ruler) => notion.Sizes
        .Select(size => $"{Printed.Count(size.Count)} of {ruler.WithUnit(size.LengthMm)}").Append($"{Printed.Count(notion.Stops)} stops");

    private static string Name(NotionEstimate notion) => notion.What switch
    {
        "zip" => $"{(notion.IsSeparating ? "Separating zips" : "Zips")}, {notion.MakeUp}",
        "binding" => $"Binding for {notion.MakeUp}",
        "tie" => "Tape of ties",
        Fitting.HookLoop => "Hook and loop, each",
        Fitting.Binding => "Binding round the edges of sheet and mesh",
        Fitting.Webbing => "Webbing along jambs and head",
        Fitting.TieBack => "Tape of tie-backs",
        Fitting.LoadTab => "Webbing of load tabs, each with a buckle",
        Fitting.LiftingLoop => "Webbing of lifting loops",
        "webbing" => "Webbing in the hem",
        "hem binding" => "Binding of the raw edges in the hem's gaps",
        _ => throw new ArgumentOutOfRangeException(nameof(notion), notion.What, "Nothing of this name is sold."),
    };
}
