using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What lies along a zipped rim: sheets cut short of the teeth, curves, cover strips.</summary>
public class ZipRimTests
{
    private static readonly Job Dome = SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, 60, 0.003));

    [Fact]
    public void Sheet_OfSharpCornersWhereCornersAreTrimmed_EndsShortOfTheTeethAllRound()
    {
        var square = new OpeningOrder("F2.05", 0, 0, 0, IsCarried: true) { Size = (500, 400), HasLayers = true };
        var job = ClosedOpeningTests.Opened(Dome with { Seam = Dome.Seam with { Corners = CornerStyle.Trimmed } }, square, wish => wish with { Held = JoinKind.Zip, Sheet = "clear" });

        Assert.Empty(SewingJobs.FaultsOf(job));
        var file = SewnFile.Read(SewingJobs.PiecesText(job));
        var sheet = file.Patterns.Single(pattern => pattern.Id == file.Pieces.Single(piece => piece.Label == "O1p").Pattern);

        // Half a chain of 10 mm on every side.
        Assert.Equal(490.0 * 390.0, FlatPoint.AreaOf(sheet.CutLine), 2.0);
        Assert.Equal(4, sheet.CutLine.Count);
    }

    /// <summary>A projected rim bends where it crosses a line of the cover, by a degree or two, beside short steps of its curve: no tighter curve for a zip.</summary>
    [Theory]
    [InlineData(180)]
    [InlineData(200)]
    [InlineData(220)]
    [InlineData(240)]
    public void Faults_ProjectedRoundWindowOverAFold_NoneOfItsCurve(double right)
    {
        var round = new OpeningOrder("F2.05", right, 0, 0, IsCarried: true) { Size = (700, 700), Corner = 350, HasLayers = true };
        var job = ClosedOpeningTests.Opened(Dome with { Panels = [new PanelWish(PanelForm.Bands)] }, round, wish => wish with { Held = JoinKind.Zip, Sheet = "clear", Laid = LayingRule.Projected });

        Assert.DoesNotContain(ClosedOpeningTests.FaultsOf(job), fault => fault.Said.Contains("a zip round a curve", StringComparison.Ordinal));
    }

    /// <summary>Wherever rounding puts the quarters of the rim, 600 mm above all: one began at its very end.</summary>
    [Theory]
    [InlineData(330)]
    [InlineData(450)]
    [InlineData(600)]
    [InlineData(700)]
    public void Strips_RoundACircleOfAnySize_AreEqual(double width)
    {
        var circle = new OpeningOrder("F2.02", 0, 0, 0, IsCarried: true) { Size = (width, width), Corner = width / 2, HasLayers = true };
        var job = ClosedOpeningTests.Opened(SewingJobs.Dome(new CoverSizes(2, 3, 3350, 23, 120, 0)), circle, wish => wish with { Held = JoinKind.Zip, Sheet = "clear", Strip = SewingJobs.Mm(80) });

        Assert.Empty(SewingJobs.FaultsOf(job));
        var file = SewnFile.Read(SewingJobs.PiecesText(job));
        var strips = file.Pieces.Where(piece => piece.Label.EndsWith('c')).Select(piece => file.Patterns.First(pattern => pattern.Id == piece.Pattern).Runs[0].LengthMm).ToArray();

        // One step of the drawn circle more or less on each, as in the test above.
        Assert.Equal(4, strips.Length);
        Assert.True(strips.Max() - strips.Min() < 3, string.Join(" ", strips));
    }

    [Fact]
    public void Strips_RoundACircle_AreFourThatTogetherGoRound()
    {
        var circle = new OpeningOrder("F2.05", 0, 0, 0, IsCarried: true) { Size = (460, 460), Corner = 230, HasLayers = true };
        var job = ClosedOpeningTests.Opened(Dome, circle, wish => wish with { Held = JoinKind.Zip, Sheet = "clear", Strip = SewingJobs.Mm(80) });

        Assert.Empty(SewingJobs.FaultsOf(job));
        var file = SewnFile.Read(SewingJobs.PiecesText(job));
        var strips = file.Pieces.Where(piece => piece.Label.EndsWith('c')).Select(piece => file.Patterns.First(pattern => pattern.Id == piece.Pattern)).ToArray();

        // A quarter of the teeth's circle and 30 mm beyond each end; edges 40 mm outside and inside of it are longer and shorter by a quarter turn of 40 mm.
        // Its ends go on along the last chord, so that one step of the drawn circle, 1.5 degrees, is missing of the quarter: 1.05 mm at 40 mm.
        const double step = 1.1;
        Assert.Equal(4, strips.Length);
        var (middle, aside) = ((Math.PI * 230 / 2) + 60, Math.PI * 40 / 2);
        Assert.All(strips, strip =>
        {
            Assert.Equal(middle + aside, strip.Runs[0].LengthMm, step);
            Assert.Equal(80, strip.Runs[1].LengthMm, 0.01);
            Assert.Equal(middle - aside, strip.Runs[2].LengthMm, step);
            Assert.Equal(80, strip.Runs[3].LengthMm, 0.01);
        });
    }
}
