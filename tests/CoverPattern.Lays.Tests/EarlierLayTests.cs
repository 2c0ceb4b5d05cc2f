using System;
using System.Linq;
using static CoverPattern.Lays.Tests.BoxLays;

namespace CoverPattern.Lays.Tests;

/// <summary>Lays that a job names: kept, begun from, with pieces that stay.</summary>
public sealed class EarlierLayTests
{
    [Fact]
    public void Plan_KeptLays_AreUsedAsTheyAre()
    {
        var job = Job();
        var lay = Plan(job, Twelve).Single();
        // Two columns further along than need be: nobody who searches would leave that.
        var loose = lay with { Placements = [.. lay.Placements.Select(place => Left(place) > 500 ? place with { X = place.X + 700 } : place)] };

        var kept = Plan(job with { Lay = job.Lay with { Keep = Earlier(loose) } }, Twelve).Single();

        Assert.True(loose.Placements.SequenceEqual(kept.Placements));
        Assert.Equal(LayOrigin.Kept, kept.Making.Origin);
        Assert.Equal(lay.LengthMm + 700, kept.LengthMm, tolerance: 1e-6);
    }

    public static TheoryData<string, Func<Lay, Lay>> WrongKept => new()
    {
        { "overlap", lay => lay with { Placements = lay.Placements.SetItem(1, lay.Placements[0] with { Piece = lay.Placements[1].Piece }) } },
        { "lies on no lay", lay => lay with { Placements = lay.Placements.RemoveAt(3) } },
        { "No piece of cloth canvas is called", lay => lay with { Placements = lay.Placements.SetItem(0, lay.Placements[0] with { Piece = "P99" }) } },
        { "turned by 90 degrees", lay => lay with { Placements = lay.Placements.SetItem(0, new Placement("P01", 4000, 500, 90, false)) } },
        { "wrong side up", lay => lay with { Placements = lay.Placements.SetItem(0, new Placement("P01", 4000, 500, 0, true)) } },
        { "allowed are 20.0000", lay => lay with { Placements = lay.Placements.SetItem(0, lay.Placements[0] with { Y = -5 }) } },
    };

    [Theory]
    [MemberData(nameof(WrongKept))]
    public void Plan_KeptLaysThatAreWrong_AreRefusedWithTheReason(string reason, Func<Lay, Lay> plant)
    {
        var job = Job();
        var planted = plant(Plan(job, Twelve).Single());

        var fault = Assert.Throws<EarlierLaysRefusedException>(() => Plan(job with { Lay = job.Lay with { Keep = Earlier(planted) } }, Twelve));

        Assert.Contains(reason, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_LaysToStartFrom_AreNeverMadeLongerAndLockedPiecesStay()
    {
        var job = Job();
        var lay = Plan(job, Twelve).Single();
        var loose = lay with { Placements = [.. lay.Placements.Select(place => Left(place) > 500 ? place with { X = place.X + 700 } : place)] };
        var locked = loose.Placements.First(place => Left(place) > 1000);

        var onward = job with { Lay = job.Lay with { Start = Earlier(loose), Locked = [locked.Piece] } };
        var again = Plan(onward, Twelve).Single();

        Assert.Contains(locked, again.Placements);
        Assert.True(again.LengthMm <= lay.LengthMm + 700, $"{again.LengthMm}");
        Assert.Equal(LayOrigin.Continued, again.Making.Origin);
        Assert.Empty(OrderProof.Check(onward, [again], Twelve));
        var moved = again with { Placements = [.. again.Placements.Select(place => place == locked ? place with { Y = place.Y + 1 } : place)] };
        Assert.Equal(LayFault.Moved, OrderProof.Check(onward, [moved], Twelve).Single().Fault);
    }

    [Fact]
    public void Plan_LaysToStartFromWithAPieceMore_LayItToo()
    {
        var job = Job();
        var lay = Plan(job, Boxes(11)).Single();

        var again = Plan(job with { Lay = job.Lay with { Start = Earlier(lay) } }, Twelve).Single();

        Assert.Equal(12, again.Placements.Length);
        Assert.Empty(LayProof.Check([again], Twelve));
    }

    [Fact]
    public void Plan_LockedPiecesThatClash_AreRefused()
    {
        var job = Job();
        var lay = Plan(job, Twelve).Single();
        var planted = lay with { Placements = lay.Placements.SetItem(1, lay.Placements[0] with { Piece = "P02" }) };

        var fault = Assert.Throws<EarlierLaysRefusedException>(() => Plan(job with { Lay = job.Lay with { Start = Earlier(planted), Locked = ["P01", "P02"] } }, Twelve));

        Assert.Contains("cannot stay beside", fault.Message, StringComparison.Ordinal);
    }
}
