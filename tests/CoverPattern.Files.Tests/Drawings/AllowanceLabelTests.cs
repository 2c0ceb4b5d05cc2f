using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

public class AllowanceLabelTests
{
    [Fact]
    public void Draw_RandomJobs_EveryLabelLiesInTheAllowanceClearOfNotches()
    {
        var job = Gen.Select(Gen.Int[1, 3], Gen.Double[800, 4000], Gen.Double[6, 40], (frequency, radius, width) =>
        {
            var dome = ReportResults.Dome(frequency, (3 * frequency / 2) + 1, radius);
            return dome with { Seam = SeamWish.Of(MakeUpForm.Plain, ReportResults.Mm(Math.Round(width, 1))) };
        });

        job.Sample(
            wish =>
            {
                var set = ReportResults.WithoutLays(wish).Pieces;
                var labels = CheckSheet(set);

                // A plain seam of 12 mm is wide enough for letters of 5 mm.
                Assert.True(labels == set.Patterns.Length || wish.Seam.MakeUp.Width.Millimetres < 12);
            },
            iter: 6,
            threads: 1);
    }

    [Fact]
    public void Draw_SamplePieces_LabelsInTheAllowance() =>
        // The small one has allowances of 5 mm only.
        Assert.Equal(3, CheckSheet(SamplePieces.Set));

    [Fact]
    public void OnSheet_HoweverThePieceLies_FootTowardTheCutLineAndNeverMirrored()
    {
        var pattern = SamplePieces.Set.Patterns[1];
        var label = AllowanceLabel.Find(pattern, ["P1.01"])!;

        // The lower edge is the only one that is no weld edge: 15 mm below it lies the cut line, so letters stand upright.
        Assert.Equal(-7.5, label.At.Y, 9);
        Assert.Equal(0, label.OnSheet(RigidMap.Identity).TurnDegrees, 9);
        Assert.Equal(90, label.OnSheet(RigidMap.FromDegrees(90, default, mirrored: false)).TurnDegrees, 9);
        // Mirrored, the cut line is above: upside down, not mirrored.
        Assert.Equal(180, Math.Abs(label.OnSheet(RigidMap.FromDegrees(0, default, mirrored: true)).TurnDegrees), 9);
    }

    [Fact]
    public void Find_NotchInTheMiddle_StepsAside()
    {
        var pattern = SamplePieces.Set.Patterns[1];

        var label = AllowanceLabel.Find(pattern, ["P1.01"])!;

        // The notch stands in the middle of 800.5 mm.
        Assert.True(Math.Abs(label.At.X - 400.25) > LetterWidth.Estimate("P1.01", label.Height) / 2);
    }

    [Fact]
    public void Find_WeldEdges_None()
    {
        var pattern = SamplePieces.Set.Patterns[0];
        var welded = pattern with
        {
            Runs = [.. pattern.Runs.Select(run => run with { Role = CoverPattern.Patterns.Seams.EdgeRole.Seam, MakeUp = "welded" })],
            Notches = [.. pattern.Notches.Select(notch => notch with { Form = NotchForm.Tick })],
        };

        Assert.Null(AllowanceLabel.Find(welded, ["P1.01"]));
    }

    /// <summary>Checks each label on a pattern sheet with the exact predicates; returns how many stand in an allowance.</summary>
    private static int CheckSheet(PieceSet set)
    {
        var drawing = PatternSheet.Draw(set);
        var count = 0;
        foreach (var (pattern, insertion) in set.Patterns.Zip(drawing.Insertions))
        {
            var label = drawing.Texts.Single(text =>
                text.Layer == DrawingLayers.Label && (text.Text == pattern.Id || text.Text.StartsWith(pattern.Id + ",", StringComparison.Ordinal)));
            GridPoint[] box = [.. DrawingExtent.Corners(label).Select(Grid.ToSteps)];
            var (cut, sew) = (Rings.ToSteps(insertion.Map.Apply(pattern.CutLine)), Rings.ToSteps(insertion.Map.Apply(pattern.SewLine)));

            Assert.All(box, corner => Assert.Equal(1, ExactPredicates.Locate(cut, corner)));
            Assert.All(Sides(box), side => Assert.DoesNotContain(Sides(cut), edge => ExactPredicates.SegmentsMeet(side.From, side.To, edge.From, edge.To)));
            Assert.All(Sides(box), side => Assert.DoesNotContain(pattern.Notches, notch => ExactPredicates.SegmentsMeet(
                side.From, side.To, Grid.ToSteps(insertion.Map.Apply(notch.OnSewLine)), Grid.ToSteps(insertion.Map.Apply(notch.Outer)))));
            count += box.All(corner => ExactPredicates.Locate(sew, corner) < 0) ? 1 : 0;
        }

        return count;
    }

    private static IEnumerable<(GridPoint From, GridPoint To)> Sides(IReadOnlyList<GridPoint> ring) =>
        ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Count]));
}
