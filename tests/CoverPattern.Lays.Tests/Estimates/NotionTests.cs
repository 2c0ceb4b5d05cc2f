using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Tests.Estimates;

/// <summary>What is bought is longer than what is sewn, and comes in the lengths in which it is sold.</summary>
public class NotionTests
{
    private static readonly NotionWish Sold = new(Samples.Mm(150), Samples.Mm(60), Samples.Mm(500), Samples.Mm(40));

    [Fact]
    public void Count_Zips_EachIsRoundedUpAndHasTwoStops()
    {
        // By hand: 500 + 60 mm to the next multiple of 150 is 600; two covers have two.
        var zip = Count(MakeUpForm.Zip, Sold);

        Assert.Equal((1000, 1200, 4), (zip.LengthMm, zip.BuyMm, zip.Stops));
        Assert.Equal(new NotionSize(600, 2), Assert.Single(zip.Sizes));
    }

    [Fact]
    public void Count_ZipsOfALinersRoof_ComeApart()
    {
        // By the liner's page roof and wall come off each by itself; a zip in a seam of the cover does not come apart.
        var set = Samples.TwoCovers();
        var zipped = set with { Patterns = [.. set.Patterns.Select(pattern => pattern with { Runs = [.. pattern.Runs.Select(run => run with { MakeUp = run.MakeUp.Length > 0 ? "liner zip" : string.Empty })] })] };
        var job = Samples.Job(Samples.Canvas) with { Covers = 2, Notions = Sold, Liner = new LinerWish("canvas", Samples.Mm(40), Samples.Mm(50)) };

        Assert.True(Estimator.Count(job, zipped, []).Total.Notions.Single().IsSeparating);
        Assert.False(Count(MakeUpForm.Zip, Sold).IsSeparating);
    }

    [Theory]
    [InlineData(100, 0, 1000)]
    [InlineData(100, 0.005, 1000)]
    [InlineData(100, 1, 1200)]
    [InlineData(250, 250, 1500)]
    public void Count_LengthThatIsAMultiple_IsNotRoundedFurther(double step, double ends, double bought)
    {
        // By hand: 500 mm a zip; a hundredth of a millimetre is rounding, a millimetre is not.
        var zip = Count(MakeUpForm.Zip, Sold with { ZipStep = Samples.Mm(step), ZipEnds = Samples.Mm(ends) });

        Assert.Equal(bought, zip.BuyMm, 1e-9);
    }

    [Fact]
    public void Count_Binding_EndsOfEachAndOneRounding()
    {
        // By hand: twice 500 + 40 mm are 1080; by half metres 1500.
        var binding = Count(MakeUpForm.Bound, Sold);

        Assert.Equal((1000, 1500, 0, 0), (binding.LengthMm, binding.BuyMm, binding.Sizes.Length, binding.Stops));
    }

    [Fact]
    public void Count_WebbingHem_OnceRoundEachCover()
    {
        // By hand: each cover has two hems of 400 mm; 2 x (800 + 40) are 1680, by half metres 2000.
        var job = Samples.Job(Samples.Canvas) with { Covers = 2, Notions = Sold, Hem = new HemWish(Samples.Mm(30), Samples.Mm(10)) { Kind = HemKind.Webbing, Webbing = Samples.Mm(25) } };

        var webbing = Estimator.Count(job, Samples.TwoCovers(), []).Total.Notions.Single();

        Assert.Equal(("webbing", 2, 1600.0, 25.0, 2000.0), (webbing.What, webbing.Count, webbing.LengthMm, webbing.WidthMm, webbing.BuyMm));
    }

    [Theory]
    [InlineData(100, 800, 1000)]
    [InlineData(195, 1600, 2000)]
    public void Count_SleeveHem_RawEdgesInTheGapsAreBound(double gap, double bare, double bought)
    {
        // By hand: four hems of 400 mm, each with 2 x 100 raw; with 2 x 195 only 10 mm of sleeve would be left, so none is turned up. 40 mm more for each.
        var job = Samples.Job(Samples.Canvas) with { Covers = 2, Notions = Sold, Hem = new HemWish(Samples.Mm(30), Samples.Mm(10)) { Kind = HemKind.Sleeve, Pipe = Samples.Mm(20), Gap = Samples.Mm(gap) } };

        var binding = Estimator.Count(job, Samples.TwoCovers(), []).Total.Notions.Single();

        Assert.Equal(("hem binding", 4, bare, 36.0, bought), (binding.What, binding.Count, binding.LengthMm, binding.WidthMm, binding.BuyMm));
    }

    [Fact]
    public void Count_WindowRingsAndSplashBands_AreStitchedAndPriced()
    {
        // By hand: a ring of 300 mm inside and 370 outside is stitched along pi x 370 and twice pi x 300; a band along its upper edge of 1000 mm.
        var job = Samples.Job(Samples.Canvas) with { Rates = RatesWish.None with { PerHour = 60, Seams = [new SeamRate("window ring", 2), new SeamRate("felled", 1)] } };
        var set = Samples.TwoCovers();
        var (ring, band) = (Ring(), Band());
        var more = set with
        {
            Patterns = [.. set.Patterns, ring, band],
            Pieces = [.. set.Pieces, new Piece("C1 W1r", "T02", false, [new("U1", EdgeRole.Turned, null), new("R9", EdgeRole.Rim, null)], []), new Piece("C1 Q1", "T03", false, [new("Q1", EdgeRole.Turned, null)], [])],
        };

        var estimate = Estimator.Count(job, more, []);

        Assert.Equal(
            [("felled", 1, 500.0), ("splash band", 1, 1000), ("window rim", 2, 600 * System.Math.PI), ("window ring", 1, 370 * System.Math.PI)],
            estimate.PerCover.Seams.Select(seam => (seam.MakeUp, seam.Seams, seam.LengthMm)));
        var line = estimate.Cost.Lines.Single(one => one.What == "seams, window ring");
        Assert.Equal(2 * 0.37 * System.Math.PI, line.Amount!.Value, 1e-9);
        Assert.Contains("minutes for seams, window rim", estimate.Cost.Missing);
        Assert.Null(estimate.Cost.Total);
    }

    private static Pattern Ring()
    {
        var square = Square(370);
        var rim = new Cutout("window", Square(300), Square(300), new EdgeRun(0, 0, EdgeRole.Rim, "c8", string.Empty, EdgeSide.None, 300 * System.Math.PI, 12));
        return new Pattern("T02", "canvas", PieceKind.WindowRing, 1, square, square, [new(0, 0, EdgeRole.Turned, "c7", string.Empty, EdgeSide.None, 370 * System.Math.PI, 12)], [], [], [], [], [rim], new(default, new(9, 0)), [], default, 0);
    }

    private static Pattern Band() =>
        new("T03", "canvas", PieceKind.Strip, 1, Square(1000), Square(1000), [new(0, 1, EdgeRole.Turned, "c6", string.Empty, EdgeSide.None, 1000, 12)], [], [], [], [], [], new(default, new(9, 0)), [], default, 0);

    private static System.Collections.Immutable.ImmutableArray<Point2> Square(double side) => [new(0, 0), new(side, 0), new(side, side), new(0, side)];

    private static NotionEstimate Count(MakeUpForm form, NotionWish sold)
    {
        var job = Samples.Job(Samples.Canvas) with { Covers = 2, Notions = sold, Seam = new SeamWish(MakeUp.Of(form, Samples.Mm(12)) with { Name = "felled" }) };
        return Estimator.Count(job, Samples.TwoCovers(), []).Total.Notions.Single();
    }
}
