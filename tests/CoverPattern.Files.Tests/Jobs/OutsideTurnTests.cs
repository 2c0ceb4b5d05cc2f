using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Exchange;
using CoverPattern.Files.Jobs;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Jobs;

public class OutsideTurnTests
{
    /// <summary>A box of 300 x 200 mm with its grain upward, a sew line 10 mm inside, a slit in the middle of its lower edge, a hole.</summary>
    private static readonly ExchangePiece Box = new(
        "bag", 2, 1, "canvas",
        Square(0, 0, 300, 200),
        [Square(10, 10, 290, 190).Add(new(10, 10))],
        [Square(100, 50, 150, 80)],
        [],
        [new ExchangeNotch(new(150, 0), ExchangeNotchKind.Slit, 4, 0, 90)],
        [],
        new(50, 50), new(50, 150),
        []);

    [Fact]
    public void Make_GrainUpward_IsTurnedAlongTheRoll()
    {
        var (piece, fault) = OutsideTurn.Make(Box, "BAG");

        Assert.Empty(fault);
        // By hand: a quarter turn clockwise puts what was up to the right, so the box is 200 long and 300 high.
        var box = Rings.Bounds(piece!.CutLine);
        Assert.Equal((new Point2(0, 0), new Point2(200, 300)), (box.Low, box.High));
        Assert.True(piece.GrainTo.X > piece.GrainFrom.X && piece.GrainTo.Y == piece.GrainFrom.Y);
        Assert.Equal((new Point2(0, 150), new Point2(4, 150)), piece.Slits.Single());
        Assert.Equal(280 * 180, Rings.SignedArea(piece.SewLine), 6);
        Assert.Equal(-50 * 30, Rings.SignedArea(piece.Cutouts.Single()), 6);
        Assert.Empty(piece.Lines);
    }

    [Fact]
    public void Make_NoSewLineAllRound_TheCutLineIsIt()
    {
        var (piece, _) = OutsideTurn.Make(Box with { SewLines = [[new(10, 10), new(290, 10)]] }, "BAG");

        Assert.Equal(piece!.CutLine, piece.SewLine);
        Assert.Single(piece.Lines);
    }

    [Fact]
    public void Make_WhatCannotBeCutSo_SaysWhy()
    {
        Assert.Contains("no grain line", OutsideTurn.Make(Box with { GrainTo = Box.GrainFrom }, "BAG").Fault, System.StringComparison.Ordinal);
        Assert.Contains("quantity of none", OutsideTurn.Make(Box with { Right = 0, Left = 0 }, "BAG").Fault, System.StringComparison.Ordinal);
        Assert.Contains("leaves the cut line", OutsideTurn.Make(Box with { SewLines = [Square(10, 10, 310, 190).Add(new(10, 10))] }, "BAG").Fault, System.StringComparison.Ordinal);
        Assert.Contains("hole that reaches", OutsideTurn.Make(Box with { Cutouts = [Square(100, 0, 150, 80)] }, "BAG").Fault, System.StringComparison.Ordinal);
    }

    private static ImmutableArray<Point2> Square(double left, double low, double right, double high) => [new(left, low), new(right, low), new(right, high), new(left, high)];
}
