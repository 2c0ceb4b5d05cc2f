using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Tests;

public sealed class LayProofTests
{
    private const double Hundredth = 10.0 / Grid.StepsPerMillimetre;

    private static readonly PieceSet Pieces = Samples.TwoCovers();

    [Fact]
    public void Check_LayByHand_FindsNothing() => Assert.Empty(LayProof.Check([ByHand()], Pieces));

    [Theory]
    [InlineData(0, -Hundredth, 0, LayFault.Outside)]
    [InlineData(0, 0, -Hundredth, LayFault.Outside)]
    [InlineData(2, 0, 670 + Hundredth, LayFault.Outside)]
    [InlineData(1, -3 - Hundredth, 0, LayFault.Overlap)]
    [InlineData(1, -Hundredth, 0, LayFault.TooClose)]
    [InlineData(0, 0.0001, 0, LayFault.OffGrid)]
    public void Check_PieceMoved_FindsIt(int moved, double x, double y, LayFault fault)
    {
        var lay = ByHand();
        var place = lay.Placements[moved];

        var findings = LayProof.Check(lay with { Placements = lay.Placements.SetItem(moved, place with { X = place.X + x, Y = place.Y + y }) }, Pieces);

        Assert.Contains(findings, finding => finding.Fault == fault);
    }

    [Fact]
    public void Check_PieceWrongSideUp_IsFound()
    {
        var lay = ByHand();

        var finding = Assert.Single(LayProof.Check(lay with { FaceDown = false }, Pieces), finding => finding.Piece == "C1 P1");

        Assert.Equal(LayFault.WrongSide, finding.Fault);
    }

    [Fact]
    public void Check_MissingTwiceUnknownAndLength_AreEachFound()
    {
        var lay = ByHand();
        var renamed = lay.Placements.SetItem(3, lay.Placements[3] with { Piece = "C9 P9" }).SetItem(2, lay.Placements[2] with { Piece = "C1 P1" });

        var faults = LayProof.Check([lay with { Placements = renamed, LengthMm = lay.LengthMm + 1 }], Pieces).Select(finding => (finding.Fault, finding.Piece));

        Assert.Equal(
            [(LayFault.Missing, "C2 P1"), (LayFault.Missing, "C2 P2"), (LayFault.Twice, "C1 P1"), (LayFault.Unknown, "C9 P9"), (LayFault.WrongLength, "")],
            faults);
    }

    /// <summary>Four boxes of 400 x 300 in a row, 3 mm apart, 20 mm free at the ends, 15 mm at the edges; face down.</summary>
    /// <remarks>A piece that is not mirrored lies mirrored (y from -300 to 0) and is shifted up by its height.</remarks>
    private static Lay ByHand()
    {
        ImmutableArray<Placement> placements = [.. Pieces.Pieces.Select((piece, i) => new Placement(piece.Label, 20 + (i * 403), piece.Mirrored ? 15 : 315, 0, !piece.Mirrored))];
        return new Lay("canvas", 1000, 970, 20, 20 + (4 * 403) - 3 + 20, 3, FaceDown: true, placements);
    }
}
