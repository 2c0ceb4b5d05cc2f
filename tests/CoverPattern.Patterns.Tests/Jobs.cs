using System;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests;

/// <summary>Jobs for tests, and the corridor from a job to its pieces.</summary>
internal static class Jobs
{
    /// <summary>A dome of the given rows and sphere radius with plain values; change it with <c>with</c>.</summary>
    internal static Job Dome(int frequency, int rows, double radius, double standOff = 25) => new(
        1,
        "test",
        new DateOnly(2026, 3, 1),
        1,
        new FrameWish(FrameFamily.Icosahedron, frequency, rows, string.Empty, FrameMeasure.Radius, Mm(radius)),
        new StandOffWish(Mm(standOff), Mm(standOff), Mm(0)),
        0,
        new SkirtWish(Mm(60)),
        new HemWish(Mm(38), Mm(12)),
        SeamWish.Of(MakeUpForm.Plain, Mm(15)),
        [new Cloth("canvas", Mm(2030), Mm(10), Mm(10), 350, Nap.None, HasFace: true)],
        new LayWish(Mm(2), Mm(30), TurnRule.Grain, FaceDown: true, 10, 1),
        [],
        []);

    internal static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    internal static WindowWish Window(double aperture) => new([], null, Mm(aperture), Mm(35), Mm(20), Mm(12), "clear") { Screen = "mesh" };

    /// <summary>The job with a window in each facet of rows 2 and 3, with panes of clear sheet and screens of mesh.</summary>
    internal static Job Windowed(Job job, double aperture) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear", HasFace = false }, job.Cloths[0] with { Name = "mesh", HasFace = false }],
        Windows = [Window(aperture) with { Rows = new RowRange(2, 3) }],
    };

    internal static Shell Shell(Job job) => ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));

    internal static (Shell Shell, PanelPlan Plan) Panels(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        return (shell, PanelPlanner.Plan(job, frame, shell));
    }

    internal static (Shell Shell, Subdivision Cut, PieceFinishing Finishing) Pieces(Job job)
    {
        var (shell, panels) = Panels(job);
        var laid = OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), shell);
        var cut = HubStops.Shorten(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, panels), laid.Regions));
        return (shell, cut, PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut), WindowPieces.Make(job, laid.Windows)));
    }
}
