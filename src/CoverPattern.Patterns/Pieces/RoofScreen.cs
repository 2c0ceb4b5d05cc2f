using System;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the roof screen: the roof's panels once more, of mesh, without openings; along the roof's line they bear the screen's own zips.</summary>
public static class RoofScreen
{
    /// <summary>The pieces, labelled as the roof's with the screen's letter before; null where none is wished.</summary>
    /// <param name="job">The order.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">What becomes of its edges, the roof's zips among them.</param>
    public static PieceFinishing? Make(Job job, Frame frame, Shell shell, SeamPlan plan)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(plan);
        if (job.Roof?.Screen is not { } mesh || RoofLine.Find(job, frame, shell) is not { } line)
        {
            return null;
        }

        var own = job with
        {
            Seam = new SeamWish(RoofWish.ScreenSeam),
            Cloths = [.. job.Cloths.OrderBy(cloth => !string.Equals(cloth.Name, mesh, StringComparison.Ordinal))],
            Marks = MarkWish.Bare,
            Windows = [],
            Openings = [],
            Pipes = [],
            // Which half of the zip is told on it, load tabs are not.
            Roof = job.Roof with { Tabs = default },
        };
        var sewn = plan with { Edges = [.. plan.Edges.Select(edge => edge.MakeUp is null || edge.MakeUp.Name == RoofWish.ZipName ? edge : edge with { MakeUp = RoofWish.ScreenSeam })] };
        var cut = Subdivider.Cut(shell, sewn);
        var finishing = PieceFinisher.Finish(own, shell, cut, [.. PanelFlattener.Flatten(cut).Where(panel => line.Faces.Contains(cut.Patches[panel.Patches[0]].Face))]);
        return finishing with
        {
            Set = Labels.Before(RoofWish.ScreenLetter, finishing.Set),
            Faults = [.. finishing.Faults.Select(fault => fault with { Place = "roof.screen", Said = $"{fault.Place}: {fault.Said}" })],
            Notices = [],
        };
    }
}
