using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Shells;

public class DeckCheckTests
{
    private static readonly DeckWish Plain = new(DeckDatum.Lowest);

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(6, 10)]
    [InlineData(3, 8)]
    public void Faults_NothingStated_None(int frequency, int rows) => Assert.Empty(Faults(Jobs.Dome(frequency, rows, 3000)));

    [Fact]
    public void Faults_EveryContradiction_AllAtOnce()
    {
        var deck = Plain with
        {
            Datum = DeckDatum.Mean,
            Heights = Heights(_ => 0),
            Raise = Jobs.Mm(38.1),
            Plinth = Jobs.Mm(100),
            Ground = Heights(_ => 0),
            Tilt = new DeckTilt(0.02, 0),
        };

        var places = Faults(Jobs.Dome(3, 5, 3657.6) with { Deck = deck }).Select(fault => fault.Place).ToArray();

        Assert.Equal(["deck.raise", "deck.plinth", "deck.datum", "deck.fall", "deck.plinth", "deck.fall"], places);
    }

    [Fact]
    public void Faults_EdgeParallelToTheChords_FollowsNoDeck()
    {
        var job = Jobs.Dome(3, 5, 3657.6) with
        {
            Skirt = new SkirtWish(Jobs.Mm(60), SkirtShape.Chords),
            Deck = Plain with { Plinth = Jobs.Mm(100), Ground = Heights(_ => 0) },
        };

        Assert.Equal(["deck.plinth", "deck.ground"], Faults(job).Select(fault => fault.Place));
        Assert.Empty(Faults(job with { Deck = Plain with { Raise = Jobs.Mm(38.1) } }));
    }

    [Fact]
    public void Faults_Labels_UnknownAndMissingAreTold()
    {
        var heights = Heights(_ => 10).RemoveAt(6).Add(new HubHeight("H0.16", Jobs.Mm(1)));

        var faults = Faults(Jobs.Dome(3, 5, 3657.6) with { Deck = Plain with { Heights = heights } });

        Assert.Equal(["deck.heights[\"H0.16\"]", "deck.heights"], faults.Select(fault => fault.Place));
        Assert.Contains("H0.01 to H0.15", faults[0].Allowed, StringComparison.Ordinal);
        Assert.Equal("nothing for H0.07", faults[1].Said);
    }

    [Theory]
    [InlineData(2, 3, 1)]
    [InlineData(6, 10, 4)]
    public void Faults_RaiseWithoutTwoLevels_IsTold(int frequency, int rows, int levels)
    {
        var fault = Assert.Single(Faults(Jobs.Dome(frequency, rows, 3657.6) with { Deck = Plain with { Raise = Jobs.Mm(38.1) } }));

        Assert.Equal("deck.raise", fault.Place);
        Assert.Contains(FormattableString.Invariant($"these stand at {levels}"), fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_HeightBeyondItsChord_IsTold()
    {
        // The chords are 1508 and 1476 mm long: a hub 1.6 m above its neighbours cannot be.
        var faults = Faults(Jobs.Dome(3, 5, 3657.6, standOff: 0) with { Deck = Plain with { Heights = Heights(hub => hub == 3 ? 1600 : 0) } });

        Assert.Equal(2, faults.Length);
        Assert.All(faults, fault => Assert.StartsWith("deck.heights[\"H0.0", fault.Place, StringComparison.Ordinal));
        Assert.Contains("1600 mm are asked", faults[0].Allowed, StringComparison.Ordinal);
        Assert.Empty(Faults(Jobs.Dome(3, 5, 3657.6, standOff: 0) with { Deck = Plain with { Heights = Heights(hub => hub == 3 ? 1400 : 0) } }));
    }

    [Fact]
    public void Faults_GroundAboveAllHubs_IsTold()
    {
        var fault = Assert.Single(Faults(Jobs.Dome(3, 5, 3657.6) with { Deck = Plain with { Ground = Heights(_ => 130) } }));

        // High hubs of the cover at 53.93, drop 60, ground 130: 16.07 mm too high.
        Assert.Equal(("deck.ground", true), (fault.Place, fault.Said.Contains("by 16.1 mm", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(8, 2)]
    [InlineData(3, 8)]
    public void Faults_SlopeOfFlatFacets_IsTold(int frequency, int rows)
    {
        var job = Jobs.Dome(frequency, rows, 3000, standOff: 0) with { Skirt = new SkirtWish(Jobs.Mm(100), SkirtShape.Slope) };

        Assert.Equal("skirt.shape", Assert.Single(Faults(job)).Place);
        Assert.Empty(Faults(job with { Skirt = job.Skirt with { Shape = SkirtShape.Vertical } }));
    }

    [Fact]
    public void SkirtCheck_MeasuredRaise_ShowsBothAndFlagsOver10()
    {
        // Model 58.350 at R = 3657.6; 38.1 measured is 20.25 apart.
        var notice = Notices(Jobs.Dome(3, 5, 3657.6) with { Deck = Plain with { Raise = Jobs.Mm(38.1) } }).Single(one => one.Code == "measured-raise");
        var near = Notices(Jobs.Dome(3, 5, 3657.6) with { Deck = Plain with { Raise = Jobs.Mm(55) } }).Single(one => one.Code == "measured-raise");

        Assert.Equal((NoticeLevel.Warning, NoticeLevel.Note), (notice.Level, near.Level));
        Assert.Contains("measured 38.1 mm", notice.Text, StringComparison.Ordinal);
        Assert.Contains("by the model 58.4 mm, 20.3 mm apart", notice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void SkirtCheck_EdgeOnTheDeckOrLeaningIn_IsTold()
    {
        var job = Jobs.Dome(3, 5, 3657.6, standOff: 0);

        Assert.Contains(Notices(job with { Skirt = new SkirtWish(Jobs.Mm(0)) }), notice => notice.Code == "skirt-on-deck");
        Assert.DoesNotContain(Notices(job), notice => notice.Code is "skirt-on-deck" or "skirt-leans-in");
        Assert.Contains(Notices(job with { Skirt = new SkirtWish(Jobs.Mm(60), SkirtShape.Slope) }), notice => notice.Code == "skirt-leans-in");
    }

    private static ImmutableArray<HubHeight> Heights(Func<int, double> height)
    {
        var frame = FrameBuilder.Build(Jobs.Dome(3, 5, 3657.6).Frame);
        return [.. frame.Base.Select(hub => new HubHeight(frame.Hubs[hub].Label, Jobs.Mm(height(hub))))];
    }

    private static ImmutableArray<Fault> Faults(Job job) => DeckCheck.Faults(job, FrameBuilder.Build(job.Frame));

    private static ImmutableArray<Notice> Notices(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        return SkirtCheck.Check(job, frame, ShellFitter.Fit(job, frame));
    }
}
