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

        Assert.Equal(new NotionEstimate("tie", string.Empty, 3, 1800, 25), estimate.PerCover.Notions.Single());
        Assert.Equal(new NotionEstimate("tie", string.Empty, 6, 3600, 25), estimate.Total.Notions.Single());
    }
}
