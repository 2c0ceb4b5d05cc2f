using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes what is sewn round stove pipes, all of heat cloth: patch, sleeve or cone boot, rain flap, closing flap. docs/pipes.md shows how they go together.</summary>
public static class PipePieces
{
    /// <summary>Purpose of the line on patch and cover to which the closing flap's edge is laid.</summary>
    public const string ClosingPurpose = "closing flap";

    // Finished width of the lap where the sleeve is closed round the pipe (common practice, no source), millimetres.
    private const double SleeveLap = 25;

    // Points of a foot nearer than this are one: rounding of double arithmetic at 100 m, millimetres.
    private const double OnePoint = 1e-6;

    /// <summary>The pieces of one cover: "J1p", "J1s", "J1f" and "J1c" for the first pipe.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">Where the patch's rim meets seams.</param>
    /// <param name="pipes">The pipes; those with hubs inside have no pieces.</param>
    public static ImmutableArray<AddedPiece> Make(Shell shell, SeamPlan plan, ImmutableArray<LaidPipe> pipes)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);
        if (pipes.IsEmpty)
        {
            return [];
        }

        var surface = new ClippedShell(shell);
        return [.. pipes.Where(pipe => pipe.HubsInside.IsEmpty).SelectMany(pipe => Of(surface, plan, pipe))];
    }

    private static IEnumerable<AddedPiece> Of(ClippedShell surface, SeamPlan plan, LaidPipe pipe)
    {
        var patch = LoneCut.Between(surface, pipe.Region, pipe.Hole, point => point.Edge < 0 || plan.Edges[point.Edge].Role != EdgeRole.Fold);
        patch = patch with { Drawn = [.. DrawnLine.On(patch.Patches, new RegionMark(ClosingPurpose, pipe.ClosingFlap.Rim))] };
        foreach (var (panel, i) in PanelFlattener.Flatten(patch).Select((panel, i) => (panel, i)))
        {
            yield return Patch(pipe, patch, panel, pipe.Label + "p" + Number(i));
        }

        yield return Sleeve(surface.Shell, pipe);
        foreach (var (region, letter) in new[] { (pipe.RainFlap, "f"), (pipe.ClosingFlap, "c") })
        {
            var inside = LoneCut.Inside(surface, region);
            foreach (var (panel, i) in PanelFlattener.Flatten(inside).Select((panel, i) => (panel, i)))
            {
                yield return Flap(pipe, (region, inside), panel, pipe.Label + letter + Number(i));
            }
        }
    }

    private static string Number(int i) => i == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{i + 1}");

    private static AddedPiece Patch(LaidPipe pipe, Subdivision cut, Panel panel, string label)
    {
        var turn = InsidePanel.Upright(pipe.Region, cut, panel);
        var edges = RunsOf(panel.Outline).Select(run => new AddedEdge(cut.Arcs[run.Arc].Label, IsSecond: true, EdgeRole.Rim, pipe.Wish.Lap.Millimetres) { Steps = run.Steps });
        var hole = new AddedEdge(pipe.Hole.Label, IsSecond: false, EdgeRole.Rim, pipe.Wish.TurnUnder.Millimetres);
        ImmutableArray<ImmutableArray<Point2>> holes =
        [
            .. panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => cut.Patches[pair.First].Holes.Select(one => turn.After(pair.Second).Apply(one.Ring))),
            .. panel.Holes.Select(one => turn.Apply(one.Select(edge => edge.From))),
        ];
        return new AddedPiece(label, pipe.Wish.Cloth, PieceKind.PipePatch, turn.Apply(panel.Outline.Select(edge => edge.From)), [.. edges], [.. holes.Select(ring => new AddedCutout("pipe", hole with { Steps = ring.Length }) { Ring = ring })])
        {
            Folds = [.. panel.Folds.Select(fold => InsidePanel.Fold(cut, panel, fold, turn))],
            Lines = [.. panel.Patches.Zip(panel.FlatMaps).SelectMany(pair => cut.Drawn.Where(line => line.Patch == pair.First).Select(line => new MarkLine(turn.After(pair.Second).Apply(line.Path), line.Purpose)))],
        };
    }

    /// <summary>The sleeve unrolled, seen from outside, the pipe's outer end up; its own seam is a lap from foot to top.</summary>
    private static AddedPiece Sleeve(Shell shell, LaidPipe pipe)
    {
        var (lower, upper) = Unrolled(shell, pipe);
        var makeUp = MakeUp.Of(MakeUpForm.Lapped, new Measure(SleeveLap, string.Create(CultureInfo.InvariantCulture, $"{SleeveLap} mm")));
        var (turned, seam) = (pipe.Wish.TurnUnder.Millimetres, pipe.Label + "v");
        var edges = ImmutableArray.Create(
            new AddedEdge(pipe.Hole.Label, IsSecond: true, EdgeRole.Rim, turned) { Steps = lower.Length - 1 },
            new AddedEdge(seam, IsSecond: false, EdgeRole.Seam, makeUp.OverMm) { MakeUp = makeUp, Side = EdgeSide.Over },
            new AddedEdge(pipe.Label + "t", IsSecond: false, EdgeRole.Turned, turned) { Steps = upper.Length - 1 },
            new AddedEdge(seam, IsSecond: true, EdgeRole.Seam, makeUp.UnderMm) { MakeUp = makeUp, Side = EdgeSide.Under });
        return new AddedPiece(pipe.Label + "s", pipe.Wish.Cloth, PieceKind.PipeSleeve, [.. lower, .. upper.Reverse()], edges, []);
    }

    /// <summary>Foot and top of a sleeve or boot, each from left to right, as unrolled.</summary>
    internal static (ImmutableArray<Point2> Lower, ImmutableArray<Point2> Upper) Unrolled(Shell shell, LaidPipe pipe)
    {
        var foot = Distinct(pipe.FootOn(shell));
        var top = pipe.TopOver(foot);
        if (pipe.Apex is { } apex)
        {
            return TubeUnrolling.Cone(foot, apex, top);
        }

        var lower = TubeUnrolling.Straight(foot);
        return (lower, [new Point2(0, top), new Point2(lower[^1].X, top)]);
    }

    /// <summary>Heights of the foot over its lowest point at twelve even stations of the girth, from the sleeve's own seam on; none of a cone boot.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="pipe">The pipe.</param>
    public static ImmutableArray<double> Ordinates(Shell shell, LaidPipe pipe)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        const int stations = 12;
        if (pipe.Apex is not null)
        {
            return [];
        }

        var foot = Unrolled(shell, pipe).Lower;
        var lowest = foot.Min(point => point.Y);
        return [.. Enumerable.Range(0, stations).Select(i => HeightAt(foot, i * foot[^1].X / stations) - lowest)];
    }

    private static double HeightAt(ImmutableArray<Point2> line, double x)
    {
        var next = Enumerable.Range(1, line.Length - 1).First(i => line[i].X >= x || i == line.Length - 1);
        var (from, to) = (line[next - 1], line[next]);
        return from.Y + ((x - from.X) / (to.X - from.X) * (to.Y - from.Y));
    }

    private static ImmutableArray<Point3> Distinct(ImmutableArray<Point3> ring) =>
        [.. ring.Where((point, i) => Point3.Distance(point, ring[(i + ring.Length - 1) % ring.Length]) > OnePoint)];

    private static AddedPiece Flap(LaidPipe pipe, (Region Region, Subdivision Cut) flap, Panel panel, string label)
    {
        var turn = InsidePanel.Upright(flap.Region, flap.Cut, panel);
        var edge = new AddedEdge(flap.Region.Label + "e", IsSecond: false, EdgeRole.Turned, pipe.Wish.TurnUnder.Millimetres) { Steps = panel.Outline.Length };
        return new AddedPiece(label, pipe.Wish.Cloth, PieceKind.PipeFlap, turn.Apply(panel.Outline.Select(one => one.From)), [edge], [])
        {
            Folds = [.. panel.Folds.Select(fold => InsidePanel.Fold(flap.Cut, panel, fold, turn))],
        };
    }

    /// <summary>Arcs round a panel in order, each with the number of its edges.</summary>
    private static IEnumerable<(int Arc, int Steps)> RunsOf(ImmutableArray<PanelEdge> outline)
    {
        for (var (first, count) = (0, 0); first < outline.Length; first += count)
        {
            count = outline.Skip(first).TakeWhile(edge => edge.Arc == outline[first].Arc).Count();
            yield return (outline[first].Arc, count);
        }
    }
}
