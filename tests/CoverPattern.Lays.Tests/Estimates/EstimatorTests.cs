using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays.Tests.Estimates;

public sealed class EstimatorTests
{
    // By hand: a piece is 400 x 300 / 2 - 60 x 40 = 57,600 mm2, four of them 0.2304 m2. A lay of 2 m off a 1 m roll is
    // 2 m2; usable are 0.97 m x 1.96 m = 1.9012 m2. 0.2304 m2 of 340 g/m2 weigh 0.078336 kg.
    [Fact]
    public void Count_LayOfTwoCovers_IsAsByHand()
    {
        var estimate = Count(Samples.Canvas);

        var lay = Assert.Single(estimate.Lays);
        Assert.Equal(("canvas", 1, 2000.0, 4), (lay.Cloth, lay.Number, lay.LengthMm, lay.Pieces));
        Assert.Equal(2, lay.ClothAreaM2, precision: 12);
        Assert.Equal(0.2304, lay.PieceAreaM2, precision: 12);
        Assert.Equal(100 * 0.2304 / 1.9012, lay.UtilisationPercent, precision: 10);
        Assert.Equal(11.52, lay.RollPercent, precision: 10);
        Assert.Equal(1.7696, lay.FalloutM2, precision: 12);
        Assert.Equal(0.078336, lay.WeightKg!.Value, precision: 12);
        Assert.Equal(estimate.WeightKg, lay.WeightKg);
    }

    [Fact]
    public void Count_Sewing_CountsEachSeamOncePerCover()
    {
        var estimate = Count(Samples.Canvas);

        // One seam of 500 mm and two hems of 400 mm a cover.
        Assert.Equal((1, 2, 800.0), (estimate.PerCover.Covers, estimate.PerCover.Pieces, estimate.PerCover.HemMm));
        Assert.Equal(new SeamEstimate("felled", 1, 500) { Rows = 2 }, Assert.Single(estimate.PerCover.Seams));
        Assert.Equal((2, 4, 1600.0), (estimate.Total.Covers, estimate.Total.Pieces, estimate.Total.HemMm));
        Assert.Equal(new SeamEstimate("felled", 2, 1000) { Rows = 2 }, Assert.Single(estimate.Total.Seams));
    }

    [Fact]
    public void Count_MassNotStated_HasNoWeight()
    {
        var estimate = Count(Samples.Canvas with { MassPerArea = null });

        Assert.Null(estimate.WeightKg);
        Assert.Null(estimate.Lays[0].WeightKg);
    }

    [Theory]
    [InlineData(MakeUpForm.Bound, "binding", 36)]
    [InlineData(MakeUpForm.Zip, "zip", 0)]
    public void Count_BoundOrZipped_CountsTheStripOnceASeam(MakeUpForm form, string what, double width)
    {
        // By hand: seen 12 mm and turned in 6 mm on either face, 36 mm in all; one seam of 500 mm a cover.
        var makeUp = MakeUp.Of(form, Samples.Mm(12)) with { Name = "felled" };

        var estimate = Count(Samples.Job(Samples.Canvas) with { Seam = new SeamWish(makeUp) });

        NotionEstimate[] both = [Assert.Single(estimate.PerCover.Notions), Assert.Single(estimate.Total.Notions)];
        Assert.Equal([(what, "felled", 1, 500.0, width), (what, "felled", 2, 1000, width)], both.Select(one => (one.What, one.MakeUp, one.Count, one.LengthMm, one.WidthMm)));
    }

    [Fact]
    public void Count_Felled_TakesNoNotionsAndBuysItsLays()
    {
        var estimate = Count(Samples.Canvas);

        Assert.Empty(estimate.Total.Notions);
        // By hand: 5 % of 2 m and half a metre.
        Assert.Equal(new ClothNeed("canvas", 1000, 2000, 600), Assert.Single(estimate.Buying));
        Assert.Null(estimate.Cost.Total);
    }

    private static Estimate Count(Cloth cloth) => Count(Samples.Job(cloth));

    private static Estimate Count(Job job)
    {
        var pieces = Samples.TwoCovers();
        ImmutableArray<Placement> placements = [.. pieces.Pieces.Select(piece => new Placement(piece.Label, 0, 0, 0, Mirrored: false))];
        return Estimator.Count(job, pieces, [new Lay("canvas", 1000, 970, 20, 2000, 3, FaceDown: false, placements)]);
    }
}
