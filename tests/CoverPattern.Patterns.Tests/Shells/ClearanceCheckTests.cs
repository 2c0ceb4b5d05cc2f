using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Shells;

public class ClearanceCheckTests
{
    [Theory]
    [InlineData(2, 1, true)]
    [InlineData(4, 2, true)]
    [InlineData(2, 3, false)]
    [InlineData(3, 5, false)]
    [InlineData(4, 7, false)]
    public void Check_ShallowCut_TellsThatTheSkirtIsNearTheTubes(int frequency, int rows, bool tells)
    {
        // 2V one row, R = 3 m: the regular pentagons of frame (5 x 1854.1 mm) and hem (9311 mm) lie 5.6 mm apart, 25 asked (by hand from both girths).
        var notices = Check(Jobs.Dome(frequency, rows, 3000)).Where(notice => notice.Code == "skirt-near-tubes").ToArray();

        Assert.Equal(tells, notices.Length == 1);
        if ((frequency, rows) == (2, 1))
        {
            Assert.Contains("only 5.6 mm", notices[0].Text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(-0.05, true)]
    [InlineData(0.003, false)]
    public void Check_NegativeEase_TellsThatTheClothLiesInTheFrame(double ease, bool tells) =>
        Assert.Equal(tells, Check(Jobs.Dome(3, 5, 2000) with { Ease = ease }).Any(notice => notice.Code == "cloth-in-frame"));

    [Fact]
    public void Check_EaseTakesTheStandOffAway_SkirtAndFacetsTellOneReasonAndTheSide()
    {
        // By hand: 25 mm of stand-off on R = 2500 mm; an ease of -2 % takes 50 mm away, so that the cloth lies about 25 mm inside the axes.
        var notices = Check(Jobs.Dome(2, 3, 2500) with { Ease = -0.02 });

        foreach (var code in new[] { "skirt-near-tubes", "cloth-in-frame" })
        {
            var text = Assert.Single(notices, notice => notice.Code == code).Text;
            Assert.Matches("2[0-9]\\.[0-9] mm inside the axes", text);
            Assert.Contains("an ease of -2 % takes away more than the stand-off gives", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Check_BaseBelowTheWidestRing_TellsWhatTheJobDoesNotHaveYet()
    {
        var open = Jobs.Dome(4, 7, 2500);
        var closing = open with { Seam = open.Seam with { Closing = new ClosingWish("rear", Jobs.Mm(40), null) } };

        Assert.Contains("Leave a seam open for fitting (seam.closing)", Check(open).Single(notice => notice.Code == "narrow-below").Text, StringComparison.Ordinal);
        Assert.Contains("Sew the closing seam only when it hangs", Check(closing).Single(notice => notice.Code == "narrow-below").Text, StringComparison.Ordinal);
    }

    // The 3V 5/8 has no ring at the equator: its base ring mirrors the one above (z = -+0.17 to 0.19 R); the 4V 7/12 has one above its base at 0.26 R below.
    [Theory]
    [InlineData(4, 7, true)]
    [InlineData(8, 23, true)]
    [InlineData(3, 5, false)]
    [InlineData(3, 4, false)]
    [InlineData(2, 3, false)]
    public void Check_BaseBelowTheWidestRing_TellsThatItCannotBePulledOver(int frequency, int rows, bool tells) =>
        Assert.Equal(tells, Check(Jobs.Dome(frequency, rows, 2500)).Any(notice => notice.Code == "narrow-below"));

    private static ImmutableArray<Notice> Check(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        return ClearanceCheck.Check(job, frame, ShellFitter.Fit(job, frame));
    }
}
