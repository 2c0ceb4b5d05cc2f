using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Jobs whose pieces are sewn up, the corridor to their pieces.json, and the same order in the tests' own numbers.</summary>
internal static class SewingJobs
{
    /// <summary>A cover with plain values; change it with <c>with</c>.</summary>
    internal static Job Dome(CoverSizes sizes) => new(
        1,
        "sewn up",
        new DateOnly(2026, 3, 1),
        1,
        new FrameWish(FrameFamily.Icosahedron, sizes.Frequency, sizes.Rows, string.Empty, FrameMeasure.Radius, Mm(sizes.Radius)),
        new StandOffWish(Mm(sizes.StandOff), Mm(0), Mm(0)),
        sizes.Ease,
        new SkirtWish(Mm(sizes.Drop)),
        new HemWish(Mm(38), Mm(12)),
        SeamWish.Of(MakeUpForm.Plain, Mm(15)),
        [new Cloth("canvas", Mm(2030), Mm(10), Mm(10), 350, Nap.None, HasFace: true)],
        new LayWish(Mm(2), Mm(30), TurnRule.Grain, FaceDown: true, 10, 1),
        [],
        []);

    internal static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    /// <summary>The cover with windows in facets named; two cloths more, of panes and screens.</summary>
    internal static Job Windowed(Job job, params WindowWish[] windows) => job with
    {
        Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear" }, job.Cloths[0] with { Name = "mesh" }],
        Windows = [.. windows],
    };

    /// <summary>A window with screen and plain values.</summary>
    internal static WindowWish Window(double aperture, params string[] facets) =>
        new([.. facets], null, Mm(aperture), Mm(35), Mm(20), Mm(12), "clear") { Screen = "mesh" };

    /// <summary>The order as the assembler is told it.</summary>
    internal static SewingOrder OrderOf(Job job) => new(
        new CoverSizes(job.Frame.Frequency, job.Frame.Rows, job.Frame.Size.Millimetres, job.StandOff.TubeRadius.Millimetres, job.Skirt.Drop.Millimetres, job.Ease),
        job.Seam.MakeUp.Form switch
        {
            MakeUpForm.Plain => "plain",
            MakeUpForm.Lapped => "lapped",
            MakeUpForm.Felled => "felled",
            MakeUpForm.FolderFelled => "folder-felled",
            MakeUpForm.SplitWelded => "split-welded",
            MakeUpForm.Bound => "bound",
            MakeUpForm.Zip => "zip",
            _ => "welded",
        },
        job.Seam.MakeUp.Width.Millimetres,
        job.Hem.Depth.Millimetres + job.Hem.TurnUnder.Millimetres,
        job.Covers,
        job.Cloths[0].HasFace,
        job.Cloths[0].Nap == Nap.OneWay ? GrainRule.OneWay : job.Lay.Turns == TurnRule.Free ? GrainRule.Free : GrainRule.EitherWay)
    {
        Windows = [.. job.Windows.SelectMany(wish => wish.Facets.Select(facet => new WindowOrder(
            facet,
            wish.Aperture.Millimetres / 2,
            (wish.Aperture.Millimetres / 2) + wish.Ring.Millimetres,
            (wish.Aperture.Millimetres / 2) + wish.Lap.Millimetres,
            wish.TurnUnder.Millimetres,
            wish.Screen is not null,
            wish.Right.Millimetres,
            wish.Up.Millimetres)))],
    };

    /// <summary>The text of pieces.json.</summary>
    internal static string PiecesText(Job job) => Encoding.UTF8.GetString(PiecesFile.Write(Finish(job).Set));

    private static PieceFinishing Finish(Job job)
    {
        var shell = ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));
        var openings = OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), shell);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell), openings.Regions);
        return PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut), WindowPieces.Make(job, openings.Windows));
    }
}
