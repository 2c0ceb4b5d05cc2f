using System;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Tests;

public sealed class LayPlannerTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Plan_TwinsOnFacedCloth_LieRightSideUpAndAreProved(bool isFaceDown)
    {
        var pieces = Samples.TwoCovers();

        var lay = Assert.Single(LayPlanner.Plan(Samples.Job(Samples.Canvas, isFaceDown: isFaceDown), pieces, null, CancellationToken.None));

        Assert.Empty(LayProof.Check([lay], pieces));
        Assert.Equal(["C1 P1", "C1 P2", "C2 P1", "C2 P2"], lay.Placements.Select(p => p.Piece));
        Assert.Equal([isFaceDown, !isFaceDown, isFaceDown, !isFaceDown], lay.Placements.Select(p => p.Mirrored));
        Assert.All(lay.Placements, p => Assert.Contains(p.TurnDegrees, new[] { 0.0, 180.0 }));
    }

    [Fact]
    public void Plan_RollWithMarginsAndEnds_KeepsThemFree()
    {
        // 1000 mm roll less twice 10 + 5: 970 usable from 15 to 985; 20 mm free at each end.
        var pieces = Samples.TwoCovers();

        var lay = LayPlanner.Plan(Samples.Job(Samples.Canvas), pieces, null, CancellationToken.None).Single();

        var laid = lay.Placements.SelectMany(p => RigidMap.FromDegrees(p.TurnDegrees, new(p.X, p.Y), p.Mirrored).Apply(pieces.Patterns[0].CutLine)).ToArray();
        Assert.Equal(970, lay.UsableWidthMm);
        Assert.Equal(20, laid.Min(p => p.X));
        Assert.Equal(lay.LengthMm - 20, laid.Max(p => p.X));
        Assert.InRange(laid.Min(p => p.Y), 15, 985);
        Assert.InRange(laid.Max(p => p.Y), 15, 985);
    }

    [Fact]
    public void Plan_EqualPieces_AreNumberedAlongTheRoll()
    {
        var lay = LayPlanner.Plan(Samples.Job(Samples.Canvas), Samples.TwoCovers(), null, CancellationToken.None).Single();

        var x = lay.Placements.ToDictionary(p => p.Piece, p => p.X);
        Assert.True(x["C1 P1"] <= x["C2 P1"]);
        Assert.True(x["C1 P2"] <= x["C2 P2"]);
    }

    [Theory]
    [InlineData(Nap.OneWay, TurnRule.Grain, "0")]
    [InlineData(Nap.OneWay, TurnRule.Free, "0")]
    [InlineData(Nap.None, TurnRule.Grain, "0 180")]
    [InlineData(Nap.None, TurnRule.Free, "free")]
    public void TurnsOn_NapAndRule_AreTheNarrower(Nap nap, TurnRule rule, string expected)
    {
        var turns = LayPlanner.TurnsOn(Samples.Canvas with { Nap = nap }, rule);

        Assert.Equal(expected, turns.IsFree ? "free" : string.Join(' ', turns.Degrees));
    }

    [Fact]
    public void Plan_OneWayNap_TurnsNothing()
    {
        var cloth = Samples.Canvas with { Nap = Nap.OneWay };

        var lay = LayPlanner.Plan(Samples.Job(cloth, TurnRule.Free), Samples.TwoCovers(), null, CancellationToken.None).Single();

        Assert.All(lay.Placements, p => Assert.Equal(0, p.TurnDegrees));
    }

    [Theory]
    [InlineData(329)]
    [InlineData(25)]
    public void Plan_RollTooNarrow_NamesClothPieceAndWidths(double rollWidth)
    {
        // The piece is 300 across; the roll has 30 less than its width.
        var job = Samples.Job(Samples.Canvas with { RollWidth = Samples.Mm(rollWidth) });

        var fault = Assert.Throws<RollTooNarrowException>(() => LayPlanner.Plan(job, Samples.TwoCovers(), null, CancellationToken.None));

        Assert.Equal(("canvas", "C1 P1", 300, rollWidth - 30), (fault.Pieces[0].Cloth, fault.Label, fault.Pieces[0].PieceMm, fault.Pieces[0].UsableMm));
        Assert.Contains("wider roll", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_SeveralTooWide_AreToldAtOnceBeforeAnythingIsLaid()
    {
        // The first cloth is wide enough and would be laid first; the others are too narrow for the same piece, 300 across.
        var pieces = Samples.TwoCovers();
        string[] narrow = ["silk", "linen"];
        var all = new PieceSet(
            [.. pieces.Patterns, .. narrow.Select(cloth => pieces.Patterns[0] with { Id = cloth, Cloth = cloth })],
            [.. pieces.Pieces, .. narrow.Select((cloth, i) => pieces.Pieces[0] with { Label = $"C1 Q{i + 8}", Pattern = cloth })]);
        var job = Samples.Job(Samples.Canvas);
        job = job with { Cloths = [.. job.Cloths, .. narrow.Select((cloth, i) => Samples.Canvas with { Name = cloth, RollWidth = Samples.Mm(329 - (19 * i)) })] };
        var told = new CountOfReports();

        var fault = Assert.Throws<RollTooNarrowException>(() => LayPlanner.Plan(job, all, told, CancellationToken.None));

        Assert.Equal([("silk", 300, 299), ("linen", 300, 280)], fault.Pieces.Select(piece => (piece.Cloth, piece.PieceMm, piece.UsableMm)));
        Assert.Contains("Piece C1 Q9 needs 300.0 mm across the roll; cloth linen has 280.0 mm", fault.Message, StringComparison.Ordinal);
        Assert.Equal(0, told.Count);

        // The first cloth by itself is laid, and tells so.
        LayPlanner.Plan(job, pieces, told, CancellationToken.None);
        Assert.InRange(told.Count, 1, int.MaxValue);
    }

    private sealed class CountOfReports : IProgress<NestingProgress>
    {
        public int Count { get; private set; }

        public void Report(NestingProgress value) => Count++;
    }

    [Fact]
    public void Plan_NarrowRollWithFreeTurn_LaysTheLongEdgeAlong()
    {
        // Height over the slope: 400 x 300 / 500 = 240 across.
        var job = Samples.Job(Samples.Canvas with { RollWidth = Samples.Mm(271) }, TurnRule.Free);
        var pieces = Samples.TwoCovers();

        Assert.Empty(LayProof.Check(LayPlanner.Plan(job, pieces, null, CancellationToken.None), pieces));
    }

    [Fact]
    public void Plan_ManyCovers_AreLaidInSeveralEqualLays()
    {
        // A cover of 2 x 57,600 mm2 on 970 mm at the guessed density: 100 m hold 505 covers, so 600 need two lays.
        var one = Samples.TwoCovers();
        var pieces = one with { Pieces = [.. Enumerable.Range(1, 600).SelectMany(c => one.Pieces.Take(2).Select(p => p with { Label = $"C{c:000} {p.Label[3..]}" }))] };
        var job = Samples.Job(Samples.Canvas);

        var lays = LayPlanner.Plan(job with { Lay = job.Lay with { Effort = 1 } }, pieces, null, CancellationToken.None);

        Assert.Equal([1, 2], lays.Select(lay => lay.Number));
        Assert.Equal([600, 600], lays.Select(lay => lay.Placements.Length));
        Assert.Equal(lays[0].LengthMm, lays[1].LengthMm);
        Assert.Empty(LayProof.Check(lays, pieces));
    }

    [Fact]
    public void Plan_CoverTooMuchForOneLay_IsLaidInParts()
    {
        // By hand: 400 pairs that make a rectangle of 400 x 300 on a strip of 370 mm lie one behind the other, 160 m; their area alone needs 125 m.
        var one = Samples.TwoCovers();
        var pieces = one with { Pieces = [.. Enumerable.Range(1, 400).SelectMany(c => one.Pieces.Take(2).Select((p, i) => p with { Label = $"P{c:0000}.{i}" }))] };
        var job = Samples.Job(Samples.Canvas with { RollWidth = Samples.Mm(400) });

        var lays = LayPlanner.Plan(job with { Lay = job.Lay with { Effort = 1 } }, pieces, null, CancellationToken.None);

        Assert.True(lays.Length > 1);
        Assert.All(lays, lay => Assert.InRange(lay.LengthMm, 1, 131_000));
        Assert.Empty(LayProof.Check(lays, pieces));
    }

    [Fact]
    public void Plan_ClothWithoutPieces_HasNoLay()
    {
        var job = Samples.Job(Samples.Canvas);

        var lays = LayPlanner.Plan(job with { Cloths = [Samples.Canvas with { Name = "mesh" }, Samples.Canvas] }, Samples.TwoCovers(), null, CancellationToken.None);

        Assert.Equal("canvas", Assert.Single(lays).Cloth);
    }
}
