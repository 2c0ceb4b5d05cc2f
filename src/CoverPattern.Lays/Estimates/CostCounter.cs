using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Estimates;

/// <summary>Prices an estimate by the job's rates; what has no rate has no price, never zero.</summary>
public static class CostCounter
{
    private const double MillimetresPerMetre = 1000;
    private const double MinutesPerHour = 60;

    /// <summary>Prices all covers of a job.</summary>
    /// <param name="job">Its rates are read.</param>
    /// <param name="cloths">Running metres by cloth; their spare is not priced.</param>
    /// <param name="work">Pieces, seams and hems of all covers.</param>
    /// <returns>Lines of what there is; a quantity of zero makes no line and needs no rate.</returns>
    public static Cost Count(Job job, ImmutableArray<ClothNeed> cloths, SewingEstimate work)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(work);

        var rates = job.Rates;
        var missing = new List<string>();
        CostLine[] bought = [.. cloths.Where(cloth => cloth.LaysMm > 0).Select(cloth => ClothLine(rates, cloth, missing))];
        CostLine[] works = [.. WorkLines(job, work).Where(line => line.Quantity > 0).Select(line => Priced(rates, line, missing))];
        if (rates.PerHour is null && works.Length > 0)
        {
            missing.Add("money for an hour of work");
        }

        return new Cost(
            rates.Currency,
            [.. bought, .. works],
            works.All(line => line.Minutes is not null) ? works.Sum(line => line.Minutes) : null,
            missing.Count == 0 ? bought.Concat(works).Sum(line => line.Amount) : null,
            [.. missing]);
    }

    private static CostLine ClothLine(RatesWish rates, ClothNeed cloth, List<string> missing)
    {
        var (metres, each) = (cloth.LaysMm / MillimetresPerMetre, rates.Cloths.FirstOrDefault(rate => rate.Cloth == cloth.Cloth)?.PerMetre);
        if (each is null)
        {
            missing.Add($"the price of cloth {cloth.Cloth}");
        }

        return new CostLine($"cloth {cloth.Cloth}", metres, "m", each, null, metres * each);
    }

    private static IEnumerable<CostLine> WorkLines(Job job, SewingEstimate work)
    {
        foreach (var seam in work.Seams)
        {
            yield return new CostLine($"seams, {seam.MakeUp}", seam.LengthMm / MillimetresPerMetre, "m", SeamMinutes(job, seam.MakeUp), null, null);
        }

        yield return new CostLine("hem", work.HemMm / MillimetresPerMetre, "m", job.Rates.HemMinutes, null, null);
        yield return new CostLine("pieces handled", work.Pieces, "pieces", job.Rates.PieceMinutes, null, null);
    }

    /// <summary>A closing seam that has no minutes of its own takes those of its make-up.</summary>
    private static double? SeamMinutes(Job job, string name)
    {
        var closing = job.Seam.Closing is null ? null : job.Seam.Known().FirstOrDefault(known => !known.IsClosing && known.Closing(0).Name == name);
        return Minutes(name) ?? (closing is null ? null : Minutes(closing.Name));

        double? Minutes(string makeUp) => job.Rates.Seams.FirstOrDefault(rate => rate.MakeUp == makeUp)?.Minutes;
    }

    private static CostLine Priced(RatesWish rates, CostLine line, List<string> missing)
    {
        if (line.Each is null)
        {
            missing.Add($"minutes for {line.What}");
        }

        var minutes = line.Quantity * line.Each;
        return line with { Minutes = minutes, Amount = minutes / MinutesPerHour * rates.PerHour };
    }
}
