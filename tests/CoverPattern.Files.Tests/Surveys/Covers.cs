using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Tests.Surveys;

/// <summary>Covers over surveyed frames, and whether two covers have the same pieces.</summary>
internal static class Covers
{
    internal static readonly Job Plain = ReportResults.Dome(3, 5);

    internal static Job Over(FrameSurvey survey) => Plain with { Frame = new FrameWish(default, 0, 0, "", default, default) { Survey = survey } };

    internal static (Frame Frame, Shell Shell, Subdivision Cut, PieceSet Pieces) Make(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
        var finishing = PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut));
        Assert.Empty(finishing.Faults);
        return (frame, shell, cut, finishing.Set);
    }

    /// <summary>Every pattern of one set has its match in the other: outlines within 0.01 mm, as many pieces.</summary>
    internal static void AssertSame(PieceSet expected, PieceSet found)
    {
        Assert.Equal(expected.Patterns.Length, found.Patterns.Length);
        var left = found.Patterns.ToList();
        foreach (var pattern in expected.Patterns)
        {
            var match = left.FirstOrDefault(other => other.Quantity == pattern.Quantity && AreAlike(pattern.SewLine, other.SewLine) && AreAlike(pattern.CutLine, other.CutLine));
            Assert.True(match is not null, $"Pattern {pattern.Id} with {pattern.Quantity} pieces has no match.");
            left.Remove(match);
        }
    }

    private static bool AreAlike(ImmutableArray<Point2> one, ImmutableArray<Point2> other)
    {
        if (one.Length != other.Length)
        {
            return false;
        }

        // Grain along +x and seen from outside, so the outlines differ by a step alone, and may begin at another corner.
        return Enumerable.Range(0, one.Length).Any(shift => Enumerable.Range(0, one.Length).All(i =>
            Point2.Distance(one[i] - one[0], other[(i + shift) % one.Length] - other[shift]) < 0.01));
    }
}
