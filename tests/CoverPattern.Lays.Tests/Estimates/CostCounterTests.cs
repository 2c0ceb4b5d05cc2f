using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Lays.Tests.Estimates;

public sealed class CostCounterTests
{
    private static readonly ImmutableArray<ClothNeed> Cloths = [ClothNeed.Of("canvas", 1000, 8000)];

    private static readonly SewingEstimate Work = new(2, 4, [new SeamEstimate("felled", 2, 10_000), new SeamEstimate("felled, closing", 1, 2000)], 6000);

    private static readonly RatesWish All = new("EUR", 30, 2, 4, [new ClothRate("canvas", 12.5)], [new SeamRate("felled", 6), new SeamRate("felled, closing", 9)]);

    [Fact]
    public void Count_AllRates_SumsByHand()
    {
        var cost = Count(All);

        // By hand: cloth 8 m x 12.5 = 100; felled 10 m x 6 = 60 min, closing 2 m x 9 = 18, hem 6 m x 4 = 24, 4 pieces x 2 = 8:
        // 110 minutes at 30 an hour are 55.
        Assert.Equal([100, 30, 9, 12, 4], cost.Lines.Select(line => Math.Round(line.Amount!.Value, 9)));
        Assert.Equal(110, cost.Minutes!.Value, 9);
        Assert.Equal(155, cost.Total!.Value, 9);
        Assert.Empty(cost.Missing);
        Assert.Equal(string.Empty, cost.NotPriced);
    }

    [Fact]
    public void Count_NoRates_PricesNothingAndNamesAll()
    {
        var cost = Count(RatesWish.None);

        Assert.Null(cost.Total);
        Assert.Null(cost.Minutes);
        Assert.All(cost.Lines, line => Assert.Null(line.Amount));
        Assert.Equal(
            "not priced: the price of cloth canvas, minutes for seams, felled, minutes for seams, felled, closing, minutes for hem, minutes for pieces handled, money for an hour of work are missing",
            cost.NotPriced);
    }

    [Fact]
    public void Count_ZeroRates_AreAPrice() =>
        Assert.Equal(0, Count(new RatesWish("EUR", 0, 0, 0, [new ClothRate("canvas", 0)], [new SeamRate("felled", 0)])).Total);

    [Fact]
    public void Count_ClosingSeamWithoutMinutes_TakesThoseOfItsMakeUp()
    {
        var cost = Count(All with { Seams = [new SeamRate("felled", 6)] });

        // By hand: 9 minutes for each of 2 m become 6: 18 - 12 minutes less at 30 an hour.
        Assert.Equal(155 - 3, cost.Total!.Value, 9);
    }

    [Fact]
    public void Count_MinutesWithoutMoney_TellTheTimeAlone()
    {
        var cost = Count(All with { PerHour = null });

        Assert.Equal((110.0, null), (cost.Minutes, cost.Total));
        Assert.Equal("not priced: money for an hour of work is missing", cost.NotPriced);
    }

    [Fact]
    public void Count_NothingHemmed_NeedsNoRateForIt()
    {
        var cost = CostCounter.Count(Job(All with { HemMinutes = null }), Cloths, Work with { HemMm = 0 });

        Assert.Equal(155 - 12, cost.Total!.Value, 9);
    }

    /// <summary>Whatever is left out: there is a total exactly when every line has its amount, and a line exactly when its rates are there.</summary>
    [Fact]
    public void Count_RandomRatesLeftOut_NeverCountZeroForUnknown() =>
        Gen.Select(Gen.Bool.Array[6], Gen.Double[0.1, 100]).Sample((known, rate) =>
        {
            var rates = new RatesWish(
                "",
                known[0] ? rate : null,
                known[1] ? rate : null,
                known[2] ? rate : null,
                known[3] ? [new ClothRate("canvas", rate)] : [],
                known[4] ? [new SeamRate("felled", rate)] : known[5] ? [new SeamRate("felled, closing", rate)] : []);

            var cost = Count(rates);

            Assert.Equal(cost.Lines.All(line => line.Amount is not null), cost.Total is not null);
            Assert.Equal(cost.Total is null, !cost.Missing.IsEmpty);
            Assert.All(cost.Lines.Where(line => line.Amount is not null), line => Assert.True(line.Amount > 0));
            Assert.Equal(known[3], cost.Lines[0].Amount is not null);
            Assert.Equal(known[4] && known[0], cost.Lines[1].Amount is not null);
        });

    [Fact]
    public void Of_Cloth_KeepsItsSpareApart()
    {
        // 5 % of 8 m and half a metre (common practice, no source).
        Assert.Equal(new ClothNeed("canvas", 1000, 8000, 900), Cloths.Single());
        Assert.Equal(8, Count(All).Lines[0].Quantity);
    }

    private static Cost Count(RatesWish rates) => CostCounter.Count(Job(rates), Cloths, Work);

    private static Job Job(RatesWish rates)
    {
        var job = Samples.Job(Samples.Canvas);
        return job with { Rates = rates, Seam = job.Seam with { Closing = new ClosingWish(ClosingWish.Rear, Samples.Mm(40), null) } };
    }
}
