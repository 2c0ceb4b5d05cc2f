using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Pieces;

public class AllowanceTests
{
    // Two grid steps: both ends of a measured distance are snapped.
    private const double OnGrid = 0.002;

    [Fact]
    public void OfSeam_FelledHalfAnInch_IsHalfAnInchAndAnInch()
    {
        // "How to sew a flat-felled seam", honorbeforevictory blog: 1/2 in on the short side, 1 in on the long; 38.1 mm together.
        var felled = MakeUp.Of(MakeUpForm.Felled, new Measure(12.7, "1/2 in"));

        Assert.Equal(12.7, Allowance.OfSeam(felled, EdgeSide.Over), 9);
        Assert.Equal(25.4, Allowance.OfSeam(felled, EdgeSide.Under), 9);
        Assert.Equal(38.1, felled.OverMm + felled.UnderMm, 9);
    }

    // Cloth of each side as parts of the width. Felled: twice as wide below, to fold over; by a folder each side w/2 + w;
    // laps: both together the width (own derivation from the sew line's place in docs/seams.md).
    [Theory]
    [InlineData(MakeUpForm.Plain, 1, 1)]
    [InlineData(MakeUpForm.Lapped, 0.5, 0.5)]
    [InlineData(MakeUpForm.Felled, 1, 2)]
    [InlineData(MakeUpForm.FolderFelled, 1.5, 1.5)]
    [InlineData(MakeUpForm.Welded, 0, 1)]
    [InlineData(MakeUpForm.SplitWelded, 0.5, 0.5)]
    [InlineData(MakeUpForm.Bound, 1, 1)]
    [InlineData(MakeUpForm.Zip, 1, 1)]
    public void Finish_AnyForm_CutsItsAllowanceOnRealPieces(MakeUpForm form, double over, double under)
    {
        const double width = 12.7;
        var patterns = Cut(3, 5, MakeUp.Of(form, Jobs.Mm(width)));

        foreach (var (pattern, run) in LongSeams(patterns, width))
        {
            Assert.Equal(width * (run.Side == EdgeSide.Over ? over : under), ClothBeyond(pattern, run, 0.5), OnGrid);
        }
    }

    [Fact]
    public void Finish_HemOfTheArmyManual_CutsAnInchAndAHalfBeyondTheFinishedEdge()
    {
        // FM 10-16 fig. 8-3: 1 in hem and 1/2 in turn-under; a double hem takes depth and turn-under: 25.4 + 12.7 = 38.1 mm.
        var job = Jobs.Dome(3, 5, 3657.6) with { Hem = new HemWish(Jobs.Mm(25.4), Jobs.Mm(12.7)) };
        var patterns = Jobs.Pieces(job).Finishing.Set.Patterns;

        var hems = patterns.SelectMany(pattern => pattern.Runs.Where(run => run.Role == EdgeRole.Hem).Select(run => (pattern, run))).ToArray();

        Assert.NotEmpty(hems);
        Assert.All(hems, hem => Assert.Equal(38.1, ClothBeyond(hem.pattern, hem.run, 0.5), OnGrid));
    }

    [Fact]
    public void Finish_RolledHemOfEqualFolds_TakesTwiceItsDepth()
    {
        var job = Jobs.Dome(2, 3, 3657.6) with { Hem = new HemWish(Jobs.Mm(20), Jobs.Mm(20)) };

        Assert.All(
            Jobs.Pieces(job).Finishing.Set.Patterns.SelectMany(pattern => pattern.Runs.Where(run => run.Role == EdgeRole.Hem).Select(run => (pattern, run))),
            hem => Assert.Equal(40, ClothBeyond(hem.pattern, hem.run, 0.5), OnGrid));
    }

    /// <summary>
    /// The sew line is the first stitch row in one and the middle of the seam in the other, yet both take the same cloth:
    /// three widths for each metre of straight seam, measured between the cut lines of two real pieces.
    /// </summary>
    [Fact]
    public void Finish_TwoFelledConstructions_TakeEqualClothPerMetre() =>
        Gen.Select(Gen.Int[2, 5], Gen.Double[2500, 8000], Gen.Double[6, 20], Gen.Double[0.25, 0.75]).Sample(
            (frequency, radius, width, at) =>
            {
                var (sewn, folder) = (Beyond(MakeUpForm.Felled), Beyond(MakeUpForm.FolderFelled));

                Assert.NotEmpty(sewn);
                Assert.Equal(sewn.Keys.Order(StringComparer.Ordinal), folder.Keys.Order(StringComparer.Ordinal));
                Assert.All(sewn, seam => Assert.Equal(3 * width, seam.Value, 2 * OnGrid));
                Assert.All(sewn, seam => Assert.Equal(seam.Value, folder[seam.Key], 2 * OnGrid));

                // Cloth of both sides at one place of each seam, millimetres: square metres for a kilometre of seam.
                Dictionary<string, double> Beyond(MakeUpForm form)
                {
                    var set = Jobs.Pieces(Jobs.Dome(frequency, (3 * frequency / 2) + 1, radius) with { Seam = SeamWish.Of(form, Jobs.Mm(width)) }).Finishing.Set;
                    var patterns = set.Patterns.ToDictionary(pattern => pattern.Id);
                    return set.Pieces.SelectMany(piece => piece.Runs.Select((run, i) => (run.Arc, Pattern: patterns[piece.Pattern], Run: patterns[piece.Pattern].Runs[i])))
                        .Where(side => side.Run.Role == EdgeRole.Seam && side.Run.LengthMm > 16 * width)
                        .GroupBy(side => side.Arc, StringComparer.Ordinal)
                        .ToDictionary(sides => sides.Key, sides => sides.Sum(side => ClothBeyond(side.Pattern, side.Run, side.Run.Side == EdgeSide.Over ? at : 1 - at)), StringComparer.Ordinal);
                }
            },
            iter: 20);

    private static IEnumerable<(Pattern Pattern, EdgeRun Run)> LongSeams(IEnumerable<Pattern> patterns, double width) => patterns
        .SelectMany(pattern => pattern.Runs.Where(run => run.Role == EdgeRole.Seam && run.LengthMm > 16 * width).Select(run => (pattern, run)));

    /// <summary>How far the cut line stands beyond the sew line, measured square to it at a share of its length: not what the run says of itself.</summary>
    private static double ClothBeyond(Pattern pattern, EdgeRun run, double share)
    {
        var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
        var (along, at) = ((to - from).Unit(), Point2.Between(from, to, share));
        var outward = -1 * along.QuarterTurned();
        var crossings = new List<double>();
        for (var i = 0; i < pattern.CutLine.Length; i++)
        {
            var (start, step) = (pattern.CutLine[i], pattern.CutLine[(i + 1) % pattern.CutLine.Length] - pattern.CutLine[i]);
            var slope = Point2.Cross(outward, step);
            if (slope != 0 && Point2.Cross(start - at, outward) / slope is >= 0 and <= 1)
            {
                crossings.Add(Point2.Cross(start - at, step) / slope);
            }
        }

        return crossings.Where(distance => distance > -OnGrid).Min();
    }

    private static ImmutableArray<Pattern> Cut(int frequency, int rows, MakeUp makeUp) =>
        Jobs.Pieces(Jobs.Dome(frequency, rows, 3657.6) with { Seam = new SeamWish(makeUp) }).Finishing.Set.Patterns;
}
