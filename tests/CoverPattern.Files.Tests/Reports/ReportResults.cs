using System;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Lays.Estimates;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Results for tests, made by the real stages one after the other.</summary>
internal static class ReportResults
{
    public static readonly Notice Caution = new(NoticeLevel.Caution, "test-caution", "F1.01", "Mind the <top>.");

    public static Job Dome(int frequency, int rows, double radius = 2500) => new(
        1,
        "Orchard",
        new DateOnly(2026, 3, 1),
        1,
        new FrameWish(FrameFamily.Icosahedron, frequency, rows, "cut", FrameMeasure.Radius, Mm(radius)),
        new StandOffWish(Mm(17), Mm(25), Mm(0)),
        0.003,
        new SkirtWish(Mm(60)),
        new HemWish(Mm(38), Mm(12)),
        SeamWish.Of(MakeUpForm.Plain, Mm(15)),
        [new Cloth("canvas", Mm(2030), Mm(10), Mm(10), 350, Nap.None, HasFace: true)],
        new LayWish(Mm(2), Mm(30), TurnRule.Grain, FaceDown: true, 1, 7),
        [new Assumption("ease", "0.3 %", "common practice, no source"), new Assumption("skirt.drop", "60 mm", "common practice, no source")],
        ["ease"]);

    /// <summary>Everything but the lays, which take most of the time.</summary>
    public static Result WithoutLays(Job job) => Make(job, isLaid: false);

    public static Result WithLays(Job job, params AddedPiece[] added) => Make(job, isLaid: true, added);

    public static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    private static Result Make(Job job, bool isLaid, params AddedPiece[] added)
    {
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var cut = HubStops.Shorten(job, shell, Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlanner.Plan(job, frame, shell))));
        var set = PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut), [.. added]).Set;
        var lays = isLaid ? LayPlanner.Plan(job, set, progress: null, default) : [];
        return new Result(
            default, job, frame, shell, cut, set, lays, Estimator.Count(job, set, lays), [Caution, .. ShellCheck.Check(job, frame, shell)]);
    }
}
