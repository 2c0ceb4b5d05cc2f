using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Lays.Estimates;

namespace CoverPattern.Files.Reports;

/// <summary>What the job takes.</summary>
internal static class CountSection
{
    private const string NotKnown = "not known";

    public static void Write(PageWriter page, Result result)
    {
        var (estimate, ruler) = (result.Estimate, Ruler.Of(result.Job));
        page.Line("h2", "What it takes");
        page.Line("h3", "Cloth");
        page.Table(
            "numbers wide",
            ["Cloth", "Lay", "Length " + ruler.LongUnit, "Cloth m\u00b2", "Pieces m\u00b2", "Use of usable width %", "Use of roll %", "Fallout m\u00b2", "Pieces", "Weight kg"],
            estimate.Lays.Select(lay => new[]
            {
                lay.Cloth, Printed.Count(lay.Number), ruler.Long(lay.LengthMm), Printed.Number(lay.ClothAreaM2, 2), Printed.Number(lay.PieceAreaM2, 2),
                Printed.Number(lay.UtilisationPercent, 1), Printed.Number(lay.RollPercent, 1), Printed.Number(lay.FalloutM2, 2),
                Printed.Count(lay.Pieces), Weight(lay.WeightKg),
            }));
        page.Line("p", "Lengths are with both end allowances; the first use is without them.", ("class", "small"));
        page.Line("h3", "Sewing");
        page.Table("numbers", ["What", "One cover", "All covers"], Sewing(estimate, ruler));
        page.Table("numbers", ["In all", "Value"],
        [
            ["Cloth off the rolls m\u00b2", Printed.Number(estimate.ClothAreaM2, 2)],
            ["Cloth in the pieces m\u00b2", Printed.Number(estimate.PieceAreaM2, 2)],
            ["Fallout m\u00b2", Printed.Number(estimate.FalloutM2, 2)],
            ["Weight of the pieces kg, without thread and fittings", Weight(estimate.WeightKg)],
            ["Patterns", Printed.Count(result.Pieces.Patterns.Length)],
        ]);
        CostSection.Write(page, result);
    }

    private static IEnumerable<string[]> Sewing(Estimate estimate, Ruler ruler)
    {
        yield return ["Pieces", Printed.Count(estimate.PerCover.Pieces), Printed.Count(estimate.Total.Pieces)];
        foreach (var (one, all) in estimate.PerCover.Seams.Zip(estimate.Total.Seams))
        {
            yield return [$"Seams, {one.MakeUp}", Printed.Count(one.Seams), Printed.Count(all.Seams)];
            yield return [$"Seams, {one.MakeUp}, {ruler.LongUnit}", ruler.Long(one.LengthMm), ruler.Long(all.LengthMm)];
            if (one.Rows > 1)
            {
                yield return [$"Stitches in {Printed.Count(one.Rows)} rows, {one.MakeUp}, {ruler.LongUnit}", ruler.Long(one.Rows * one.LengthMm), ruler.Long(all.Rows * all.LengthMm)];
            }
        }

        yield return ["Hem " + ruler.LongUnit, ruler.Long(estimate.PerCover.HemMm), ruler.Long(estimate.Total.HemMm)];
    }

    private static string Weight(double? kilograms) => kilograms is null ? NotKnown : Printed.Number(kilograms.Value, 1);
}
