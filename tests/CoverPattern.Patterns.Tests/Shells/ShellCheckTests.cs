using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Shells;

public class ShellCheckTests
{
    [Theory]
    [InlineData(0.0079, false)]
    [InlineData(0.0081, true)]
    public void Check_Ease_PondsOnTheFiveTopFacetsOf3V(double ease, bool ponds)
    {
        // tan^2(12.342 degrees) / 6 = 0.798 % (own calculation).
        var notices = Check(Jobs.Dome(3, 5, 3657.6) with { Ease = ease });

        var ponding = notices.Where(notice => notice.Code == "ponding").ToArray();

        Assert.Equal(ponds, ponding.Length == 1);
        Assert.All(ponding, notice => Assert.Equal("F5.01, F5.02, F5.03, F5.04, F5.05", notice.Place));
    }

    [Theory]
    [InlineData(20, 22, false)]
    [InlineData(20, 24, true)]
    public void Check_HubOverTube_WarnsBeyond3Millimetres(double tube, double hub, bool warns)
    {
        var job = Jobs.Dome(2, 3, 2500) with { StandOff = new StandOffWish(Jobs.Mm(tube), Jobs.Mm(hub), Jobs.Mm(0)) };

        Assert.Equal(warns, Check(job).Any(notice => notice.Code == "proud-hubs"));
    }

    [Fact]
    public void Check_4VTop_IsFlatterThan10Degrees()
    {
        // The top facets of a 4V tilt 8.96 degrees (own calculation).
        var flat = Check(Jobs.Dome(4, 7, 3000)).Single(notice => notice.Code == "flat-facets");

        Assert.StartsWith("5 facets", flat.Text, System.StringComparison.Ordinal);
        Assert.DoesNotContain(Check(Jobs.Dome(3, 5, 3000)), notice => notice.Code == "flat-facets");
    }

    [Fact]
    public void Check_EdgeNearHubs_SaysSo()
    {
        // 2V 1/2 at 25 mm stands 0.79 mm below the deck (own calculation).
        var job = Jobs.Dome(2, 3, 3657.6) with { Skirt = new SkirtWish(Jobs.Mm(0)) };

        var notice = Check(job).Single(one => one.Code == "hubs-on-the-edge");

        Assert.Contains("10 base hubs", notice.Text, System.StringComparison.Ordinal);
        Assert.Contains("0.79 mm", notice.Text, System.StringComparison.Ordinal);
    }

    private static System.Collections.Immutable.ImmutableArray<Notice> Check(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        return ShellCheck.Check(job, frame, ShellFitter.Fit(job, frame));
    }

    [Theory]
    // A level 4V is level at 5/12 and 7/12 (own calculation made apart from this project); at the half its base hubs stand unlike.
    [InlineData(4, 7, FrameDivision.LevelByInnerHubs, null)]
    [InlineData(4, 6, FrameDivision.LevelByInnerHubs, "level at the cuts 5/12 and 7/12 only")]
    [InlineData(3, 6, FrameDivision.LevelByEdgeHubs, "level at the cuts 4/9 (3/8) and 5/9 (5/8) only")]
    public void Check_LevelDivisionCutElsewhere_IsWarnedOfWithItsLevelCuts(int frequency, int rows, FrameDivision division, string? said)
    {
        var dome = Jobs.Dome(frequency, rows, 3000);
        var job = dome with { Frame = dome.Frame with { Division = division } };
        var frame = FrameBuilder.Build(job.Frame);

        var raised = ShellCheck.Check(job, frame, ShellFitter.Fit(job, frame)).Where(notice => notice.Code == "raised-base-hubs").ToArray();

        Assert.Equal(said is null ? 0 : 1, raised.Length);
        Assert.All(raised, notice => Assert.Equal(NoticeLevel.Warning, notice.Level));
        Assert.All(raised, notice => Assert.Contains(said!, notice.Text, System.StringComparison.Ordinal));
    }
}
