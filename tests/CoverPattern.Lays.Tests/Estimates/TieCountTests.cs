using System.Linq;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Tests.Estimates;

public class TieCountTests
{
    [Fact]
    public void Count_ThreeTiesOnTwoCovers_SixTimesTwoTails()
    {
        // By hand: two tails of 300 mm of 25 mm tape a tie.
        var set = Samples.TwoCovers() with { Ties = [.. Enumerable.Range(0, 3).Select(i => new Tie($"H{i}.1", "S1", FromStart: true, 80))] };

        var estimate = Estimator.Count(Samples.Job(Samples.Canvas) with { Covers = 2 }, set, []);

        // 1.8 m and 3.6 m of tape, sold by the metre.
        NotionEstimate[] both = [estimate.PerCover.Notions.Single(), estimate.Total.Notions.Single()];
        Assert.Equal([("tie", 3, 1800.0, 25.0, 2000.0), ("tie", 6, 3600, 25, 4000)], both.Select(one => (one.What, one.Count, one.LengthMm, one.WidthMm, one.BuyMm)));
    }
}
