using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

public class PieceFinisherTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 7)]
    [InlineData(8, 13)]
    public void Finish_Dome_PartnersAgreeAndAreasSum(int frequency, int rows)
    {
        var (_, cut, finishing) = Jobs.Pieces(Jobs.Dome(frequency, rows, 3657.6));
        var set = finishing.Set;

        Assert.Empty(finishing.Faults);
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id);
        var pieces = set.Pieces.ToDictionary(piece => piece.Label);
        foreach (var piece in set.Pieces)
        {
            foreach (var (run, i) in piece.Runs.Select((run, i) => (run, i)).Where(entry => entry.run.Partner is not null))
            {
                var partner = pieces[run.Partner!.Piece];
                Assert.Equal(new PartnerRun(piece.Label, i), partner.Runs[run.Partner.Run].Partner);
                Assert.Equal(run.Arc, partner.Runs[run.Partner.Run].Arc);
                Assert.Equal(patterns[piece.Pattern].Runs[i].LengthMm, patterns[partner.Pattern].Runs[run.Partner.Run].LengthMm, 0.01);
            }
        }

        // Areas by another road: the patches of the cut-up surface, before anything was snapped.
        var sewn = set.Pieces.Sum(piece => Rings.SignedArea(patterns[piece.Pattern].SewLine));
        var surface = cut.Patches.Sum(patch => Rings.SignedArea(patch.Corners));
        Assert.Equal(1, sewn / surface, 1e-6);
    }

    [Fact]
    public void Finish_ThreeV_CountsPatterns()
    {
        var (_, _, finishing) = Jobs.Pieces(Jobs.Dome(3, 5, 3657.6));

        Assert.Equal(105, finishing.Set.Pieces.Length);
        Assert.Equal(105, finishing.Set.Patterns.Sum(pattern => pattern.Quantity));
        Assert.InRange(finishing.Set.Patterns.Length, 6, 40);
    }
}
