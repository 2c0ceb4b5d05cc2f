using System;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>What skirt, hem and seams are read as, and what of them cannot be.</summary>
public sealed class HemAndSeamReadingTests
{
    [Fact]
    public void Read_SplashBand_NamesACloth()
    {
        var job = JobReader.Read(JobReaderTests.With("\"skirt\": { \"splash\": { \"cloth\": \"canvas\" } }"));
        var other = JobReader.Read(JobReaderTests.With("\"skirt\": { \"splash\": { \"cloth\": \"coated\", \"width\": \"10 in\" } }"));
        var none = JobReader.Read(JobReaderTests.With("\"skirt\": { \"splash\": {} }"));

        Assert.Equal(new SplashWish("canvas", new Measure(250, "250 mm")), job.Job!.Skirt.Splash);
        Assert.Equal("skirt.splash.cloth", Assert.Single(other.Faults).Place);
        Assert.Equal("skirt.splash.cloth", Assert.Single(none.Faults).Place);
    }

    // By hand: half the girth of 34 mm is 53.4, with 10 mm of ease 63.4; welded 40 more.
    [Theory]
    [InlineData("plain", 64)]
    [InlineData("welded", 104)]
    public void Read_Sleeve_IsHalfThePipesGirthAndEase(string makeUp, double depth)
    {
        var job = JobReader.Read(JobReaderTests.With("\"seam\": { \"makeUp\": \"" + makeUp + "\" }, \"hem\": { \"kind\": \"sleeve\", \"pipe\": \"34 mm\" }")).Job!;

        Assert.Equal((depth, 100), (job.Hem.Depth.Millimetres, job.Hem.Gap!.Value.Millimetres));
        Assert.Contains(job.Assumed, assumption => assumption.Place == "hem.gap");
    }

    [Theory]
    [InlineData("\"kind\": \"sleeve\"", "hem.pipe", "nothing")]
    [InlineData("\"kind\": \"sleeve\", \"pipe\": 34, \"depth\": 50", "hem.depth", "50 mm")]
    [InlineData("\"kind\": \"sleeve\", \"pipe\": 34, \"fitting\": 50", "hem.fitting", "50 mm")]
    [InlineData("\"pipe\": 34", "hem.pipe", "34 mm")]
    [InlineData("\"gap\": 34", "hem.gap", "34 mm")]
    [InlineData("\"webbing\": 34", "hem.webbing", "34 mm")]
    [InlineData("\"kind\": \"webbing\", \"webbing\": 50", "hem.webbing", "50 mm")]
    [InlineData("\"kind\": \"rolled\"", "hem.kind", "\"rolled\"")]
    public void Read_HemThatCannotBe_IsOneFault(string hem, string place, string said)
    {
        var fault = Assert.Single(JobReader.Read(JobReaderTests.With("\"hem\": { " + hem + " }")).Faults);

        Assert.Equal((place, said), (fault.Place, fault.Said));
    }

    [Theory]
    [InlineData("\"felled\"", true, HubPatchPlace.Outside, 180, 260)]
    [InlineData("\"folderFelled\"", true, HubPatchPlace.Outside, 180, 260)]
    [InlineData("\"felled\", \"stopAtHubs\": false", false, HubPatchPlace.None, 0, 0)]
    [InlineData("\"lapped\"", false, HubPatchPlace.None, 0, 0)]
    public void Read_FelledSeams_StopShortUnderAPatchUnlessToldOtherwise(string makeUp, bool stops, HubPatchPlace patches, double diameter, double apex)
    {
        // The shop's default table: hub patch 180 mm, apex 260 mm; felled seams stop 30 mm short of hubs. Common practice, no source.
        var job = JobReader.Read(JobReaderTests.Least.Replace("\"cloths\"", "\"seam\": { \"makeUp\": " + makeUp + " }, \"cloths\"", StringComparison.Ordinal)).Job!;

        Assert.Equal((stops, patches), (job.Seam.StopAtHubs, job.Marks.HubPatches));
        Assert.Equal((diameter, apex), (job.Marks.PatchDiameter.Millimetres, job.Marks.ApexDiameter.Millimetres));
    }

    // The shop's default table: seam widths and hems by make-up; common practice, no source.
    [Theory]
    [InlineData("plain", 15, 38, 12)]
    [InlineData("lapped", 25, 38, 12)]
    [InlineData("felled", 15, 38, 12)]
    [InlineData("welded", 40, 60, 0)]
    public void Read_MakeUpAlone_TakesItsWidthAndHem(string makeUp, double width, double depth, double turnUnder)
    {
        var job = JobReader.Read(JobReaderTests.With("\"seam\": { \"makeUp\": \"" + makeUp + "\" }")).Job!;

        Assert.Equal((width, depth, turnUnder), (job.Seam.MakeUp.Width.Millimetres, job.Hem.Depth.Millimetres, job.Hem.TurnUnder.Millimetres));
        Assert.Contains(job.Assumed, assumption => assumption.Place == "seam.width" && assumption.Value == job.Seam.MakeUp.Width.Typed);
        Assert.DoesNotContain(job.Assumed, assumption => assumption.Place == "seam.makeUp");
    }

    [Fact]
    public void Read_NarrowHem_DefaultDoesNotTurnUnderMoreThanThereIs()
    {
        var job = JobReader.Read(JobReaderTests.With("\"hem\": { \"depth\": \"10 mm\" }")).Job!;

        Assert.Equal(0, job.Hem.TurnUnder.Millimetres);
    }
}
