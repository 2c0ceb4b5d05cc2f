using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

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

    [Theory]
    [InlineData(300, "hem.depth")]
    [InlineData(1200, "hem.depth")]
    public void Finish_HemHigherThanAPiece_IsAFault(double depth, string place)
    {
        // 4V facets of R = 500 mm are about 130 mm high, with a skirt of 60 mm.
        var job = Jobs.Dome(4, 7, 500, standOff: 5) with { Hem = new HemWish(Jobs.Mm(depth), Jobs.Mm(12)) };

        var faults = Jobs.Pieces(job).Finishing.Faults;

        Assert.Contains(faults, fault => fault.Place == place && fault.Said == job.Hem.Depth.Typed);
    }

    [Fact]
    public void Finish_CoversOfASet_CarryTheirNumber()
    {
        var set = Jobs.Pieces(Jobs.Dome(2, 3, 2500) with { Covers = 12 }).Finishing.Set;

        Assert.Equal(480, set.Pieces.Length);
        Assert.Equal("C01 P1.01", set.Pieces[0].Label);
        Assert.Equal("C12 P3.05", set.Pieces[^1].Label);
        Assert.Equal(480, set.Patterns.Sum(pattern => pattern.Quantity));
    }

    [Theory]
    [InlineData(MakeUpForm.Plain, 15, 15)]
    [InlineData(MakeUpForm.Lapped, 7.5, 7.5)]
    [InlineData(MakeUpForm.Felled, 15, 30)]
    [InlineData(MakeUpForm.Welded, 0, 15)]
    public void Finish_MakeUp_GivesEachSideItsAllowance(MakeUpForm makeUp, double over, double under)
    {
        var set = Jobs.Pieces(Jobs.Dome(3, 5, 2500) with { Seam = SeamWish.Of(makeUp, Jobs.Mm(15)) }).Finishing.Set;

        var seams = set.Patterns.SelectMany(pattern => pattern.Runs).Where(run => run.Role == EdgeRole.Seam).ToArray();

        Assert.All(seams, run => Assert.Equal(run.Side == EdgeSide.Over ? over : under, run.AllowanceMm));
        Assert.All(set.Patterns.SelectMany(pattern => pattern.Runs).Where(run => run.Role == EdgeRole.Hem), run => Assert.Equal(50, run.AllowanceMm));
    }

    [Fact]
    public void Finish_Notches_ObeyTheEdge()
    {
        foreach (var makeUp in new[] { MakeUpForm.Plain, MakeUpForm.Felled, MakeUpForm.Welded })
        {
            var set = Jobs.Pieces(Jobs.Dome(3, 5, 2500) with { Seam = SeamWish.Of(makeUp, Jobs.Mm(12)) }).Finishing.Set;

            foreach (var (pattern, notch) in set.Patterns.SelectMany(pattern => pattern.Notches.Select(notch => (pattern, notch))))
            {
                var run = pattern.Runs[notch.Run];
                var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
                Assert.Equal(makeUp == MakeUpForm.Welded ? NotchForm.Tick : NotchForm.Slit, notch.Form);
                Assert.Equal(run.AllowanceMm, Lines.Distance(from, to, notch.Outer), 0.002);
                Assert.Equal(notch.AtMm, Point2.Distance(from, notch.OnSewLine), 0.002);
                Assert.True(notch.Form == NotchForm.Tick || Point2.Distance(notch.Outer, notch.Inner) <= Math.Min(4, run.AllowanceMm / 4) + 0.002);
            }
        }
    }
}
