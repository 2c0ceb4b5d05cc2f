using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class SewingOrderTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    public void Of_SingleFacets_HoldsEverySeamOnceAndUprightsBeforeWhatCrossesThem(int frequency, int rows)
    {
        var (shell, cut) = Cut(Jobs.Dome(frequency, rows, 2500));

        var steps = SewingOrder.Of(shell, cut);

        var seams = cut.Arcs.Where(arc => arc.Role == EdgeRole.Seam).Select(arc => arc.Label);
        Assert.Equal(seams.Order(StringComparer.Ordinal), steps.SelectMany(step => step.Seams).Order(StringComparer.Ordinal));
        // Uprights of every row, then each row but the lowest to the one below it, from the top down.
        Assert.Equal(rows, steps.Count(step => step.Kind == SewingStepKind.WithinRow));
        Assert.Equal(
            Enumerable.Range(2, rows - 1).Reverse().Select(row => row.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            steps.Where(step => step.Kind == SewingStepKind.BetweenRows).Select(step => step.Row));
        var kinds = steps.Select(step => step.Kind).ToArray();
        Assert.True(Array.LastIndexOf(kinds, SewingStepKind.WithinRow) < Array.IndexOf(kinds, SewingStepKind.BetweenRows));
    }

    [Fact]
    public void Of_ClosingSeam_ComesLast()
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        var (shell, cut) = Cut(job with { Seam = job.Seam with { Closing = new ClosingWish(ClosingWish.Rear, Jobs.Mm(40), null) } });

        var last = SewingOrder.Of(shell, cut)[^1];

        Assert.Equal(SewingStepKind.Closing, last.Kind);
        Assert.Equal(cut.Arcs.Where(arc => arc.MakeUp is { IsClosing: true }).Select(arc => arc.Label).Order(StringComparer.Ordinal), last.Seams);
    }

    [Fact]
    public void Of_OpeningOverSeveralPieces_ComesAfterTheSeamsBetweenThem()
    {
        // A window of 300 mm inside a facet, and one of 1 m round a corner of it: that one lies on several pieces.
        var job = Jobs.Dome(2, 3, 2500);
        var wish = new OpeningWish(new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(300) }, new OpeningPlace("F2.02", default, default), LayingRule.Either, Jobs.Mm(15));
        var over = wish with { Outline = new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(1000) }, Place = new OpeningPlace("F1.02", default, default) };

        var (shell, cut) = Cut(job with { Openings = [wish, over] });
        var steps = SewingOrder.Of(shell, cut);

        var first = Assert.Single(steps, step => step.Seams.Contains("O1"));
        var later = Assert.Single(steps, step => step.Kind == SewingStepKind.Openings);
        Assert.Equal(SewingStepKind.Rims, first.Kind);
        Assert.True(later.Seams.Length > 1);
        Assert.All(later.Seams, seam => Assert.StartsWith("O2-", seam, StringComparison.Ordinal));
        Assert.All(steps.Where(step => step.Seams.Any(seam => seam[0] == 'S')), step => Assert.True(step.Kind < later.Kind));
    }

    private static (Shell Shell, Subdivision Cut) Cut(Job job)
    {
        var frame = CoverPattern.Patterns.Frames.FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        return (shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell)), CoverPattern.Patterns.Openings.OpeningLayer.Lay(job, frame, shell).Regions));
    }
}
