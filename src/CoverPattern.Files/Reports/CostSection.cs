using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Lays.Estimates;

namespace CoverPattern.Files.Reports;

/// <summary>What is to be bought, and what it all costs as far as the job's rates tell.</summary>
internal static class CostSection
{
    private const string Unknown = "not priced";

    public static void Write(PageWriter page, Result result)
    {
        var (estimate, ruler) = (result.Estimate, Ruler.Of(result.Job));
        if (!estimate.Buying.IsEmpty)
        {
            page.Line("h3", "Cloth to buy");
            page.Table("numbers", ["What", "For the lays " + ruler.LongUnit, "Spare " + ruler.LongUnit, "Of width " + ruler.Unit], Buying(estimate, ruler));
            page.Line("p", "Spare: 5 % for mistakes and half a metre of test strip, a cloth counted as one roll (common practice, no source). It is in no other number.", ("class", "small"));
        }

        NotionSection.Write(page, result);
        page.Line("h3", "Cost");
        if (result.Job.Rates.IsEmpty)
        {
            page.Line("p", "Not priced: the job states no rates.");
            return;
        }

        var cost = estimate.Cost;
        page.Table("numbers", ["What", "Quantity", "Unit", "Each", "Hours", Money("Amount", cost)], cost.Lines.Select(Row).Append(Total(cost)));
        page.Line("p", cost.Missing.IsEmpty
            ? "Rates are stated for a metre. Cloth of the lays and work. Thread, zips, bindings, fittings and spare cloth are not in it."
            : $"No total: {cost.NotPriced}. Thread, zips, bindings, fittings and spare cloth are not in it either.");
    }

    private static IEnumerable<string[]> Buying(Estimate estimate, Ruler ruler) => estimate.Buying
        .Select(cloth => new[] { "Cloth " + cloth.Cloth, ruler.Long(cloth.LaysMm), ruler.Long(cloth.SpareMm), ruler.Of(cloth.RollWidthMm) });

    private static string[] Row(CostLine line) =>
    [
        char.ToUpperInvariant(line.What[0]) + line.What[1..],
        line.Unit == "m" ? Printed.Number(line.Quantity, 2) : Printed.Number(line.Quantity, 0),
        line.Unit,
        line.Each is { } each ? Printed.Number(each, 2) + (line.What.StartsWith("cloth ", System.StringComparison.Ordinal) ? string.Empty : " min") : Unknown,
        line.Minutes is { } minutes ? Printed.Number(minutes / 60, 1) : string.Empty,
        line.Amount is { } amount ? Printed.Number(amount, 2) : Unknown,
    ];

    private static string[] Total(Cost cost) =>
    [
        "In all", string.Empty, string.Empty, string.Empty,
        cost.Minutes is { } minutes ? Printed.Number(minutes / 60, 1) : Unknown,
        cost.Total is { } total ? Printed.Number(total, 2) : Unknown,
    ];

    private static string Money(string word, Cost cost) => cost.Currency.Length > 0 ? $"{word} {cost.Currency}" : word;
}
