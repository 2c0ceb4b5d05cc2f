using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using static CoverPattern.Lays.Tests.BoxLays;

namespace CoverPattern.Lays.Tests;

/// <summary>Flaws, grades, rolls, table, plies.</summary>
public sealed class LayWishesTests
{
    [Fact]
    public void Plan_FlawAtTheCutEnd_IsLeftToPiecesThatBearIt()
    {
        // The first 500 mm of the roll are flawed over the whole width: only P01, of grade 2, may lie there.
        var roll = new RollWish("", null, [new FlawWish(Mm(0), Mm(0), Mm(500), Mm(1000), 2)]);
        var job = Job(rolls: roll) with { };
        job = job with { Lay = job.Lay with { Grades = [new GradeWish(["P01"], 2)] } };

        var lay = Plan(job, Twelve).Single();

        Assert.Empty(OrderProof.Check(job, [lay], Twelve));
        Assert.Equal(["P01"], lay.Placements.Where(place => Left(place) < 500).Select(place => place.Piece));
        Assert.Equal(2, lay.Flaws.Single().LeastGrade);
        // Four columns of 400 behind the flaw, 3 apart, hold the eleven others: 500 + 1609 + 20.
        Assert.Equal(2129, lay.LengthMm, tolerance: 0.01);
    }

    [Fact]
    public void Check_PieceMovedOntoAFlawByAHundredth_IsFound()
    {
        var roll = new RollWish("", null, [new FlawWish(Mm(0), Mm(0), Mm(500), Mm(1000), null)]);
        var job = Job(rolls: roll);
        var lay = Plan(job, Twelve).Single();
        var first = lay.Placements.Select((place, i) => (Left(place), i)).Min().i;

        Assert.Empty(OrderProof.Check(job, [lay], Twelve));
        var moved = lay with { Placements = lay.Placements.SetItem(first, lay.Placements[first] with { X = lay.Placements[first].X - Grid.Snap(new Point2(0.01, 0)).X }) };
        Assert.Equal((LayFault.OnFlaw, lay.Placements[first].Piece), OrderProof.Check(job, [moved], Twelve).Select(finding => (finding.Fault, finding.Piece)).Single());
    }

    [Fact]
    public void Plan_Table_PartsTheLayAndNoPieceCrossesItsEnd()
    {
        // 1300 mm hold three columns of 400 with 3 between and 20 at each end (1246): nine boxes, then three.
        var job = Job();
        job = job with { Lay = job.Lay with { Table = Mm(1300) } };

        var lays = Plan(job, Twelve);

        Assert.Equal([1246, 440], lays.Select(lay => Math.Round(lay.LengthMm)));
        Assert.Equal([9, 3], lays.Select(lay => lay.Placements.Length));
        Assert.Equal([1, 2], lays.Select(lay => lay.Number));
        Assert.Empty(LayProof.Check(lays, Twelve));
        Assert.Empty(OrderProof.Check(job, lays, Twelve));
    }

    [Fact]
    public void Plan_TableOnWhichNoneOfTheFirstKindLies_NamesTheOthersRightly()
    {
        // Nine boxes leave less than 100 mm across and along: the small piece, first in the list, goes on the second lay with the other three.
        ImmutableArray<Point2> small = [new(0, 0), new(100, 0), new(100, 100), new(0, 100)];
        var pieces = new PieceSet(
            [Twelve.Patterns[0], Twelve.Patterns[0] with { Id = "T02", SewLine = small, CutLine = small, Facets = [small], Quantity = 1 }],
            [Twelve.Pieces[0] with { Label = "A1", Pattern = "T02" }, .. Twelve.Pieces]);
        var job = Job();
        job = job with { Lay = job.Lay with { Table = Mm(1300) } };

        var lays = Plan(job, pieces);

        Assert.Equal([9, 4], lays.Select(lay => lay.Placements.Length));
        Assert.Equal("A1", lays[1].Placements[0].Piece);
        Assert.Empty(LayProof.Check(lays, pieces));
        Assert.Empty(OrderProof.Check(job, lays, pieces));
    }

    [Fact]
    public void Plan_TableShorterThanAPiece_NamesPieceAndRoom()
    {
        var job = Job();
        var fault = Assert.Throws<PieceTooLongException>(() => Plan(job with { Lay = job.Lay with { Table = Mm(439) } }, Twelve));

        Assert.Contains("P01 needs 400.0 mm along the roll; a lay of cloth canvas has 399.0 mm", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_Rolls_TakesTheShortestThatHoldsAllAndLeavesTheLongOneWhole()
    {
        // Four columns need 1649 mm: the roll of 2 m holds them, so the 9 m stay in one piece.
        var job = Job(rolls: [Roll(9000), Roll(1000), Roll(2000)]);

        var lay = Plan(job, Twelve).Single();

        Assert.Equal((3, 0), (lay.Roll, lay.FromMm));
        Assert.Equal(1649, lay.LengthMm, tolerance: 0.01);
        Assert.Contains(LayNotices.Of(job, [lay], Twelve), notice => notice.Text.Contains("Roll 3 of canvas: 1.65 m of 2.00 m are used, 0.35 m are left.", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_RollsThatHoldAllOnlyTogether_AreFilledOneAfterTheOther()
    {
        // 900 mm hold two columns (843), twice: twelve boxes.
        var job = Job(rolls: [Roll(900), Roll(900)]);

        var lays = Plan(job, Twelve);

        Assert.Equal([1, 2], lays.Select(lay => lay.Roll));
        Assert.Equal([6, 6], lays.Select(lay => lay.Placements.Length));
        Assert.Empty(LayProof.Check(lays, Twelve));
        Assert.Empty(OrderProof.Check(job, lays, Twelve));
    }

    [Fact]
    public void Plan_RollsTooShort_SaysHowMuchIsMissingAndDropsNothing()
    {
        var job = Job(rolls: [Roll(900), Roll(440)]);

        var fault = Assert.Throws<NotEnoughClothException>(() => Plan(job, Twelve));

        // 900 and 440 mm hold nine boxes; three of 120,000 mm2 take 371 mm of 970.
        Assert.Equal(3, fault.Left.Length);
        Assert.Contains("1.34 m in all", fault.Message, StringComparison.Ordinal);
        Assert.Contains("0.37 m more", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_TableAndRoll_LayBehindEachOther()
    {
        // On a table of 900 mm each lay holds two columns and takes 843 mm off the roll.
        var job = Job(rolls: Roll(2000));
        job = job with { Lay = job.Lay with { Table = Mm(900) } };

        var lays = Plan(job, Twelve);

        Assert.Equal([0, 843], lays.Select(lay => Math.Round(lay.FromMm)));
        Assert.Empty(OrderProof.Check(job, lays, Twelve));
    }

    [Fact]
    public void Plan_Plies_CutsEachPlaceOnceAndTheRestOnOnePly()
    {
        // Twelve boxes on five plies: two stacks, and two boxes left over.
        var job = Job();
        job = job with { Lay = job.Lay with { Plies = 5 } };

        var lays = Plan(job, Twelve);

        Assert.Equal([5, 1], lays.Select(lay => lay.Plies));
        Assert.Equal([10, 2], lays.Select(lay => lay.PieceCount));
        Assert.Equal(2, lays[0].Placements.Length);
        Assert.Empty(LayProof.Check(lays, Twelve));
        Assert.Empty(OrderProof.Check(job, lays, Twelve));
    }

    [Fact]
    public void Plan_PliesOffARollWithAFlaw_KeepClearOfItOnEveryPly()
    {
        // By hand: four stacks of three boxes lie in two columns, 20 + 803 + 20 = 843 mm. The flaw from 900 to 910 mm is on the second ply, 900 - L
        // from its end. Columns that begin behind it, at s, make L = s + 823 and the flaw end at 87 - s: s is 43.5 at least, and L 866.5.
        var roll = new RollWish("", null, [new FlawWish(Mm(900), Mm(0), Mm(10), Mm(1000), null)]);
        var job = Job(rolls: roll);
        job = job with { Lay = job.Lay with { Plies = 3 } };

        var lay = Plan(job, Twelve).Single();

        Assert.Empty(LayProof.Check([lay], Twelve));
        Assert.Empty(OrderProof.Check(job, [lay], Twelve));
        Assert.InRange(lay.LengthMm, 866.5, 900);
        Assert.Equal((2, 900 - lay.LengthMm), (lay.Flaws.Single().Ply, lay.Flaws.Single().X), (one, other) => one.Item1 == other.Item1 && Math.Abs(one.Item2 - other.Item2) < 0.002);
    }

    [Fact]
    public void Check_PliesLaidAsIfThereWereNoFlaw_NamesThePiecesOfThatPly()
    {
        // The lay of a whole roll is 843 mm long: a flaw from 900 to 910 mm lies at 57 to 67 mm of its second ply, under the first column of three.
        var job = Job(rolls: new RollWish("", null, []));
        job = job with { Lay = job.Lay with { Plies = 3 } };
        var lay = Plan(job, Twelve).Single();

        var flawed = job with { Cloths = [job.Cloths[0] with { Rolls = [new RollWish("", null, [new FlawWish(Mm(900), Mm(0), Mm(10), Mm(1000), null)])] }] };

        var first = lay.Placements.Where(place => Left(place) < 50).Select(place => place.Under[0]).Order(StringComparer.Ordinal);
        Assert.Equal(843, lay.LengthMm, tolerance: 0.01);
        Assert.Equal(first.Select(label => (LayFault.OnFlaw, label)), OrderProof.Check(flawed, [lay], Twelve).Select(finding => (finding.Fault, finding.Piece)).OrderBy(finding => finding.Piece, StringComparer.Ordinal));
    }

    [Fact]
    public void Plan_PliesFaceToFace_GiveTwins()
    {
        // Two covers of a piece and its twin: two plies give all four in two cuts.
        var pieces = Samples.TwoCovers();
        var job = Samples.Job(Samples.Canvas);
        job = job with { Lay = job.Lay with { Plies = 2, Spread = PlySpread.FaceToFace, Effort = 1 } };

        var lay = Plan(job, pieces).Single();

        Assert.Equal(4, lay.PieceCount);
        Assert.All(lay.Placements, place => Assert.Equal((true, "P1", "P2"), (place.Mirrored, place.Piece[3..], place.Under[0][3..])));
        Assert.Empty(LayProof.Check([lay], pieces));
        // Laid all one way, the ply under the top gives the wrong hand.
        Assert.Equal(2, LayProof.Check([lay with { FaceToFace = false }], pieces).Count(finding => finding.Fault == LayFault.WrongSide));
    }

    [Fact]
    public void Plan_PliesFaceToFaceOfOneHand_AreRefused()
    {
        var job = Job();

        var fault = Assert.Throws<HandsUnequalException>(() => Plan(job with { Lay = job.Lay with { Plies = 2, Spread = PlySpread.FaceToFace } }, Twelve));

        Assert.Contains("needed 12 times as drawn and 0 times mirrored", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_PlacesOfAPlyLayWithFewerPieces_AreFound()
    {
        var job = Job();
        job = job with { Lay = job.Lay with { Plies = 4 } };
        var lay = Plan(job, Twelve).Single();

        var planted = lay with { Placements = lay.Placements.SetItem(0, lay.Placements[0] with { Under = lay.Placements[0].Under.RemoveAt(0) }) };

        Assert.Equal([LayFault.Missing, LayFault.WrongPlies], LayProof.Check([planted], Twelve).Select(finding => finding.Fault));
    }

    [Fact]
    public void Plan_GrainThatMayRunOff_IsProvedAndPlantedTurnsAreFound()
    {
        var job = Samples.Job(Samples.Canvas);
        job = job with { Lay = job.Lay with { OffGrainDegrees = 3, Effort = 1 } };
        var pieces = Samples.TwoCovers();

        var lay = Plan(job, pieces).Single();

        Assert.Empty(OrderProof.Check(job, [lay], pieces));
        Assert.Equal(3, lay.Making.OffGrainDegrees);
        var turned = lay with { Placements = lay.Placements.SetItem(0, lay.Placements[0] with { TurnDegrees = 183.01 }) };
        Assert.Equal(LayFault.WrongTurn, OrderProof.Check(job, [turned], pieces).Single().Fault);
    }

    [Fact]
    public void Plan_ByHand_TellsWhenATightLayIsMuchShorter()
    {
        // On 650 mm right-angled pieces of 400 x 300 make rectangles by twos; by hand is as short here.
        var job = Job();
        var lay = Plan(job with { Lay = job.Lay with { Style = LayStyle.ByHand } }, Twelve).Single();

        Assert.Equal(LayStyle.ByHand, lay.Making.Style);
        Assert.Equal(lay.LengthMm, lay.Making.TightMm!.Value, tolerance: 0.01);
        Assert.DoesNotContain(LayNotices.Of(job, [lay], Twelve), notice => notice.Code == "by-hand-longer");
        // 4 % longer is told, 3 % is not.
        Assert.Contains(LayNotices.Of(job, [lay with { Making = lay.Making with { TightMm = lay.LengthMm / 1.04 } }], Twelve), notice => notice.Code == "by-hand-longer");
        Assert.DoesNotContain(LayNotices.Of(job, [lay with { Making = lay.Making with { TightMm = lay.LengthMm / 1.03 } }], Twelve), notice => notice.Code == "by-hand-longer");
    }
}
