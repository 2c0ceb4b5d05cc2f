using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Seams;

public class BulkCounterTests
{
    /// <summary>
    /// By hand. Felled crossing felled is up to 16 plies (practice of felled seams, worked out). A seam alone keeps its plies.
    /// One felled seam ending in another: of its 4 plies two come from the side where the other ends, each 4 thick, two from
    /// the bare side: 2 x 4 + 2 x 1 = 10. Six plain ends: 3 plies, on each side two more seams of 2 further plies: 3 x (1 + 4) = 15.
    /// Pressed open: 2 x (1 + 2) = 6. Five felled: 4 x (1 + 4.5) = 22.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4, 4)]
    [InlineData(4, 4, 4)]
    [InlineData(10, 4, 4, 4)]
    [InlineData(16, 4, 4, 4, 4)]
    [InlineData(12, 4, 3, 3, 4)]
    [InlineData(22, 4, 4, 4, 4, 4)]
    [InlineData(15, 3, 3, 3, 3, 3, 3)]
    [InlineData(6, 2, 2, 2, 2, 2, 2)]
    [InlineData(5, 2, 2, 2, 2, 2)]
    public void PliesOf_Seams_AsWorkedOutByHand(int plies, params int[] seams) =>
        Assert.Equal(plies, BulkCounter.PliesOf([.. seams]));

    [Fact]
    public void Count_FelledDome_SixSeamsAtAHubAndHemAtTheFoot()
    {
        var bulks = Bulks(With(MakeUpForm.Felled, stops: false));

        // 4 x (1 + 4 x 1.5) = 28; the upright's 4 plies in a hem of three.
        Assert.Equal(28, bulks.Where(bulk => bulk.Seams == 6).Max(bulk => bulk.Plies));
        Assert.All(bulks.Where(bulk => bulk.Crossing.Place == CrossingPlace.Foot), foot => Assert.Equal((1, 12), (foot.Seams, foot.Plies)));
        Assert.All(bulks, bulk => Assert.Equal(bulk.Plies * 0.5, bulk.ThicknessMm!.Value, 1e-9));
    }

    [Fact]
    public void Count_FelledStoppingShort_PressedOpenUnderAPatch()
    {
        var bulks = Bulks(With(MakeUpForm.Felled, stops: true));

        // 2 x (1 + 4 / 2) and the patch.
        Assert.Equal(7, bulks.Where(bulk => bulk.Seams == 6).Max(bulk => bulk.Plies));
        Assert.All(bulks.Where(bulk => bulk.Seams > 1), bulk => Assert.True(bulk.StopsShort && !bulk.IsFelled));
    }

    [Fact]
    public void Count_TrimmedPlainSeams_ArePressedOpen()
    {
        var plain = With(MakeUpForm.Plain, stops: false);
        var trimmed = plain with { Seam = plain.Seam with { Corners = CornerStyle.Trimmed } };
        var patched = trimmed with { Marks = Patches(HubPatchPlace.Both) };

        // By hand, as above: 3 x (1 + 4) = 15; pressed open 2 x (1 + 2) = 6; two patches more.
        Assert.Equal([15, 6, 8], new[] { plain, trimmed, patched }.Select(job => Bulks(job).Where(bulk => bulk.Seams == 6).Max(bulk => bulk.Plies)));
    }

    [Fact]
    public void Notices_StopsWithoutPatch_Warned()
    {
        var job = With(MakeUpForm.Felled, stops: true);
        var bare = job with { Marks = MarkWish.Bare };

        Assert.DoesNotContain(BulkCheck.Notices(job, Bulks(job)), notice => notice.Code == "stops-without-patch");
        Assert.Contains(BulkCheck.Notices(bare, Bulks(bare)), notice => notice.Code == "stops-without-patch" && notice.Level == NoticeLevel.Warning);
    }

    [Fact]
    public void Count_BaseHub_FoldsAddNothing()
    {
        var bulks = Bulks(With(MakeUpForm.Plain, stops: false));

        // Two folds (facet to skirt), the upright below and two or three seams above (own calculation: base hubs of the 3V 5/8 have 2 or 3 struts upward).
        Assert.All(bulks.Where(bulk => bulk.Crossing.Place == CrossingPlace.BaseHub), bulk =>
        {
            Assert.Equal(2, bulk.Folds);
            Assert.InRange(bulk.Seams, 3, 4);
            Assert.Equal(bulk.Seams == 3 ? 6 : 9, bulk.Plies);
        });
    }

    [Fact]
    public void Faults_ThicknessOverTheLimit_SaysPlaceValueLimitAndWayOut()
    {
        var job = With(MakeUpForm.Felled, stops: false);

        var fault = Assert.Single(BulkCheck.Faults(job, Bulks(job)));

        Assert.Equal(("limits.thickness", "8 mm"), (fault.Place, fault.Said));
        Assert.Contains("6 seams come to 28 plies, 14 mm of a cloth 0.5 mm thick", fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("seam.stopAtHubs", fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_FelledUprightsInADoubleHem_TheWaysOutHelp()
    {
        // By hand: 4 plies of 0.8 mm (No. 10 duck) turned up twice are 12, 9.6 mm; turned once 8, 6.4 mm; plain uprights 3 x 3, 7.2 mm; lapped 2 x 3, 4.8 mm.
        var job = With(MakeUpForm.Felled, stops: true);
        job = job with { Cloths = [job.Cloths[0] with { Thickness = Jobs.Mm(0.8) }] };
        Job Uprights(MakeUpForm form) => job with { Seam = job.Seam with { Others = [new SeamChoice(SeamSet.Uprights, [], MakeUp.Of(form, Jobs.Mm(15)))] } };
        double Foot(Job one) => Bulks(one).Where(bulk => bulk.Crossing.Place == CrossingPlace.Foot).Max(bulk => bulk.ThicknessMm!.Value);

        var fault = Assert.Single(BulkCheck.Faults(job, Bulks(job)));

        Assert.Contains("1 seam and the turned-up hem come to 12 plies, 9.6 mm", fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("turn the hem once (hem.turnUnder 0)", fault.Allowed, StringComparison.Ordinal);
        Assert.Equal([9.6, 6.4, 7.2, 4.8], new[] { job, job with { Hem = job.Hem with { TurnUnder = Jobs.Mm(0) } }, Uprights(MakeUpForm.Plain), Uprights(MakeUpForm.Lapped) }.Select(one => Math.Round(Foot(one), 6)));
    }

    [Fact]
    public void Faults_WithinTheLimitOrThicknessNotStated_None()
    {
        var felled = With(MakeUpForm.Felled, stops: false);
        var unknown = felled with { Cloths = [felled.Cloths[0] with { Thickness = null }] };
        var wide = felled with { Limits = felled.Limits with { Thickness = Jobs.Mm(14) } };
        var stopping = With(MakeUpForm.Felled, stops: true);

        Assert.Empty(BulkCheck.Faults(unknown, Bulks(unknown)));
        Assert.Empty(BulkCheck.Faults(wide, Bulks(wide)));
        Assert.Empty(BulkCheck.Faults(stopping, Bulks(stopping)));
        Assert.NotEmpty(BulkCheck.Faults(wide with { Limits = wide.Limits with { Thickness = Jobs.Mm(13.99) } }, Bulks(wide)));
    }

    [Theory]
    [InlineData(MakeUpForm.Felled, false, 46)]
    [InlineData(MakeUpForm.FolderFelled, false, 46)]
    [InlineData(MakeUpForm.Felled, true, 0)]
    [InlineData(MakeUpForm.Plain, false, 0)]
    [InlineData(MakeUpForm.Welded, false, 0)]
    public void Notices_SeamsMeeting_WarnsOverTheLimit(MakeUpForm form, bool stops, int places)
    {
        // 46 inner hubs have five or six seams; base hubs have four at most.
        var job = With(form, stops);

        var notices = BulkCheck.Notices(job, Bulks(job));

        Assert.Single(notices, notice => notice.Code == "crossings" && notice.Level == NoticeLevel.Note);
        var warnings = notices.Where(notice => notice.Code == "seams-meeting").ToArray();
        Assert.Equal(places > 0 ? 1 : 0, warnings.Length);
        Assert.All(warnings, warning => Assert.Contains($"so at {places} of ", warning.Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(MakeUpForm.Felled, "Let felled seams stop short of hubs (seam.stopAtHubs), or take plain or welded seams, or panels of several facets", "limits.felledSeamsAtHub")]
    [InlineData(MakeUpForm.Plain, ". Take panels of several facets", "limits.seamsAtHub")]
    [InlineData(MakeUpForm.Welded, ". Take panels of several facets", "limits.seamsAtHub")]
    public void Notices_SeamsMeeting_TheWaysOutLeaveFewerSeams(MakeUpForm form, string way, string limit)
    {
        // A thinner cloth leaves as many, and where all seams are welded it is no use to weld them.
        var job = With(form, stops: false);
        job = job with { Limits = job.Limits with { SeamsAtHub = 3, FelledSeamsAtHub = 3 } };

        var warning = Assert.Single(BulkCheck.Notices(job, Bulks(job)), notice => notice.Code == "seams-meeting");

        Assert.Contains(way, warning.Text, StringComparison.Ordinal);
        Assert.Contains(limit, warning.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("thinner cloth", warning.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Notices_SkirtThatEndsAtTheHubs_TheHemIsTold()
    {
        // A 2V 1/2 stands level: at drop 0 its base hubs lie on the finished edge. By hand: two plain seams make one of 3 plies, in a hem of three 9.
        var job = With(MakeUpForm.Plain, stops: false);
        job = job with { Frame = job.Frame with { Frequency = 2, Rows = 3 }, Skirt = new SkirtWish(Jobs.Mm(0)), StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)), Ease = 0 };
        var bulks = Bulks(job);
        ImmutableArray<CrossingBulk> low = [.. bulks.Where(bulk => bulk.Crossing.Place == CrossingPlace.BaseHub)];

        Assert.All(low, bulk => Assert.True(bulk.IsAtHem));
        Assert.DoesNotContain(bulks, bulk => bulk.Crossing.Place == CrossingPlace.Hub && bulk.IsAtHem);
        Assert.Contains("2 seams and the turned-up hem come to 9 plies", Assert.Single(BulkCheck.Notices(job, low)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_PlainSeamsTooThick_TrimmedCornersHelp()
    {
        // By hand, as above: 15 plies of 0.8 mm are 12 mm; pressed open 6 plies at hubs, the upright in the hem 9, 7.2 mm.
        var job = With(MakeUpForm.Plain, stops: false);
        job = job with { Cloths = [job.Cloths[0] with { Thickness = Jobs.Mm(0.8) }] };
        var trimmed = job with { Seam = job.Seam with { Corners = CornerStyle.Trimmed } };

        var fault = Assert.Single(BulkCheck.Faults(job, Bulks(job)));

        Assert.Contains("12 mm of a cloth 0.8 mm thick", fault.Allowed, StringComparison.Ordinal);
        Assert.Contains("(seam.corners), or take lapped or welded seams", fault.Allowed, StringComparison.Ordinal);
        Assert.Empty(BulkCheck.Faults(trimmed, Bulks(trimmed)));
    }

    private static Job With(MakeUpForm form, bool stops)
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        return job with
        {
            Seam = SeamWish.Of(form, Jobs.Mm(15)) with { StopAtHubs = stops },
            Marks = Patches(stops ? HubPatchPlace.Outside : HubPatchPlace.None),
            Cloths = [job.Cloths[0] with { Thickness = Jobs.Mm(0.5) }],
        };
    }

    private static MarkWish Patches(HubPatchPlace place) => MarkWish.Bare with { HubPatches = place, PatchDiameter = Jobs.Mm(180), ApexDiameter = Jobs.Mm(260) };

    private static ImmutableArray<CrossingBulk> Bulks(Job job)
    {
        var shell = Jobs.Shell(job);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
        return BulkCounter.Count(job, cut, CrossingFinder.Find(shell, cut), PatchedHubs.Of(job, shell, cut, new PieceSet([], [])));
    }
}
