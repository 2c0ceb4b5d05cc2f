using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

public class SewingUpTests
{
    [Theory]
    [InlineData(1, 2, 3000)]
    [InlineData(2, 3, 3657.6)]
    [InlineData(3, 5, 3657.6)]
    [InlineData(4, 7, 3657.6)]
    [InlineData(5, 8, 5000)]
    public void Faults_Dome_None(int frequency, int rows, double radius) =>
        AssertSews(SewingJobs.Dome(new CoverSizes(frequency, rows, radius, 25, 60, 0)));

    [Fact]
    public void Faults_FelledTwoVHalf_None() => AssertSews(With(Dome(2, 3), MakeUpForm.Felled, 13));

    [Theory]
    [InlineData(2500, 25, 60, 0)]
    [InlineData(3657.6, 0, 0, 0)]
    [InlineData(3657.6, 0, 60, -0.01)]
    [InlineData(3657.6, 25, 25, 0.003)]
    [InlineData(3657.6, 25, 0, 0.003)]
    [InlineData(3657.6, 60, 0, 0.003)]
    [InlineData(5000, 60, 200, 0.003)]
    [InlineData(5000, 25, 200, -0.01)]
    [InlineData(1500, 60, 25, -0.01)]
    public void Faults_ThreeVOfAnySize_None(double radius, double standOff, double drop, double ease) =>
        AssertSews(With(SewingJobs.Dome(new CoverSizes(3, 5, radius, standOff, drop, ease)), MakeUpForm.Felled, 10));

    /// <summary>The low hubs of this cover stand 4.83 mm below the deck: the finished edge passes them closely, above and below.</summary>
    [Theory]
    [InlineData(2.5)]
    [InlineData(3.7)]
    [InlineData(3.9)]
    [InlineData(4.83)]
    [InlineData(5.7)]
    [InlineData(5.9)]
    [InlineData(6.75)]
    [InlineData(6.9)]
    public void Faults_FinishedEdgeNearHubs_None(double drop) => AssertSews(SewingJobs.Dome(new CoverSizes(3, 5, 3657.6, 25, drop, 0)));

    /// <summary>Below the equator facets hang inwards and the stand-off pushes the base far below the deck: whole facets go.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 5)]
    [InlineData(3, 8)]
    [InlineData(6, 17)]
    public void Faults_NearlyNothingOrNearlyTheBall_None(int frequency, int rows)
    {
        AssertSews(SewingJobs.Dome(new CoverSizes(frequency, rows, 3000, 60, 0, 0)));
        AssertSews(SewingJobs.Dome(new CoverSizes(frequency, rows, 3000, 0, 200, 0.01)));
    }

    [Theory]
    [InlineData(MakeUpForm.Plain)]
    [InlineData(MakeUpForm.Lapped)]
    [InlineData(MakeUpForm.Felled)]
    [InlineData(MakeUpForm.FolderFelled)]
    [InlineData(MakeUpForm.Welded)]
    [InlineData(MakeUpForm.SplitWelded)]
    [InlineData(MakeUpForm.Bound)]
    [InlineData(MakeUpForm.Zip)]
    public void Faults_AnyMakeUp_None(MakeUpForm makeUp) => AssertSews(With(Dome(3, 5), makeUp, 20));

    [Theory]
    [InlineData(2, 3, Nap.None, TurnRule.Grain)]
    [InlineData(3, 5, Nap.None, TurnRule.Free)]
    [InlineData(5, 7, Nap.None, TurnRule.Free)]
    [InlineData(4, 7, Nap.None, TurnRule.Grain)]
    public void Faults_ClothWithoutFace_NoneThoughMirrored(int frequency, int rows, Nap nap, TurnRule turns)
    {
        var job = WithCloth(Dome(frequency, rows), nap, turns, hasFace: false);

        Assert.Contains(SewnFile.Read(SewingJobs.PiecesText(job)).Pieces, piece => piece.Mirrored);
        AssertSews(job);
    }

    /// <summary>A left-right twin needs the nap turned round, so one-way cloth has no mirrored pieces though it has no face.</summary>
    [Theory]
    [InlineData(3, 5)]
    [InlineData(4, 5)]
    public void Faults_OneWayClothWithoutFace_NoneAndNotMirrored(int frequency, int rows)
    {
        var job = WithCloth(Dome(frequency, rows), Nap.OneWay, TurnRule.Grain, hasFace: false);

        Assert.DoesNotContain(SewnFile.Read(SewingJobs.PiecesText(job)).Pieces, piece => piece.Mirrored);
        AssertSews(job);
    }

    [Theory]
    [InlineData(Nap.None, TurnRule.Grain)]
    [InlineData(Nap.OneWay, TurnRule.Grain)]
    [InlineData(Nap.OneWay, TurnRule.Free)]
    [InlineData(Nap.None, TurnRule.Free)]
    public void Faults_ClothWithFace_None(Nap nap, TurnRule turns) => AssertSews(WithCloth(Dome(3, 5), nap, turns, hasFace: true));

    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    public void Faults_SeveralCovers_None(int covers) => AssertSews(Dome(2, 3) with { Covers = covers });

    [Fact]
    public void Faults_EightV_None() => AssertSews(SewingJobs.Dome(new CoverSizes(8, 13, 8000, 25, 60, 0.003)));

    [Theory]
    [MemberData(nameof(Cuts))]
    [Trait("Category", "Long")]
    public void Faults_EveryCut_None(int frequency, int rows)
    {
        AssertSews(SewingJobs.Dome(new CoverSizes(frequency, rows, 4000, 25, 60, 0)));
        AssertSews(WithCloth(SewingJobs.Dome(new CoverSizes(frequency, rows, 4000, 0, 0, 0)), Nap.None, TurnRule.Free, hasFace: false));
    }

    public static IEnumerable<object[]> Cuts() =>
        Enumerable.Range(1, 8).SelectMany(frequency => Enumerable.Range(1, (3 * frequency) - 1).Select(rows => new object[] { frequency, rows }));

    /// <summary>Areas agree to a millionth after snapping, on covers of a common size; the truth's area is that of its triangles in space.</summary>
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    public void Read_Dome_AreaIsTheCoversToAMillionth(int frequency, int rows)
    {
        var job = Dome(frequency, rows);
        var file = SewnFile.Read(SewingJobs.PiecesText(job));

        var sewn = file.Patterns.Sum(pattern => pattern.Quantity * FlatPoint.AreaOf(pattern.SewLine));

        Assert.Equal(1, sewn / TrueCover.Build(SewingJobs.OrderOf(job).Sizes).Faces.Values.Sum(face => face.Area), 1e-6);
    }

    private static Job Dome(int frequency, int rows) => SewingJobs.Dome(new CoverSizes(frequency, rows, 3657.6, 25, 60, 0.003));

    private static Job With(Job job, MakeUpForm makeUp, double width) => job with { Seam = SeamWish.Of(makeUp, SewingJobs.Mm(width)) };

    private static Job WithCloth(Job job, Nap nap, TurnRule turns, bool hasFace) => job with
    {
        Cloths = [job.Cloths[0] with { Nap = nap, HasFace = hasFace }],
        Lay = job.Lay with { Turns = turns },
    };

    private static void AssertSews(Job job) => Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));
}
