using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Finishes the shape of a draft: onto the grid, with cut line, notches, grain and a place for the label.</summary>
internal static class PatternMaker
{
    // A larger circle for the label may be missed by this much, millimetres.
    private const double LabelError = 1;

    /// <summary>Makes the pattern of a draft.</summary>
    /// <param name="draft">The first draft of its kind.</param>
    /// <param name="bothWays">Classes of seams that equal pieces use from either end.</param>
    /// <param name="hem">How the hem folds.</param>
    /// <param name="corners">How the cut line goes round corners between seams.</param>
    internal static Pattern Make(PieceDraft draft, IReadOnlySet<string> bothWays, HemFold hem, CornerStyle corners)
    {
        var anchor = draft.Corners[0];
        var sewLine = Grid.Snap(draft.Corners.Select(corner => corner - anchor));
        var edges = Edges(draft, sewLine);
        ImmutableArray<SewEdge> parts = [.. draft.Runs.SelectMany((run, i) => edges.Skip(draft.Start(i)).Take(run.Steps).SelectMany(edge => StoppedEdge.Parts(run, edge with { Corner = corners })))];
        var cutLine = RoundCut(draft, anchor) ?? CutLine.Draw(parts, hem);
        var origin = Rings.Bounds(cutLine).Low;
        return FromOrigin(draft, bothWays, origin, anchor, new Outlines(edges, sewLine, cutLine));
    }

    private static Pattern FromOrigin(PieceDraft draft, IReadOnlySet<string> bothWays, Point2 origin, Point2 anchor, Outlines outlines)
    {
        ImmutableArray<Point2> sewLine = [.. outlines.SewLine.Select(point => point - origin)];
        ImmutableArray<Point2> cutLine = [.. outlines.CutLine.Select(point => point - origin)];
        ImmutableArray<SewEdge> edges = [.. outlines.Edges.Select(edge => edge with { From = edge.From - origin, To = edge.To - origin })];
        Point2 Place(Point2 point) => OnCorner(sewLine, Grid.Snap(point - anchor) - origin);
        ImmutableArray<Cutout> cutouts = [.. draft.Cutouts.Select(cutout => RoundRim.Draw(cutout, Place))];
        var label = InscribedCircle.Largest([sewLine, .. cutouts.Select(cutout => cutout.Rim)], LabelError);
        ImmutableArray<FoldLine> folds = [.. draft.Folds.Select(fold => new FoldLine(Place(fold.From), Place(fold.To)))];
        return new Pattern(
            string.Empty,
            draft.Cloth,
            draft.Kind,
            0,
            sewLine,
            cutLine,
            [.. draft.Runs.Select((run, i) => MakeRun(draft, run, i, edges))],
            folds,
            [
                .. draft.Runs.SelectMany((run, i) => Notches(run, i, edges[draft.Start(i)], bothWays).Select(notch => NotchRoom.Fit(notch, edges, draft.Start(i), cutLine))),
                .. RoundMarks(draft, Place, sewLine, cutouts),
                .. draft.AllRuns.SelectMany((run, i) => RimNotches.Make(run, i, RimPath(draft, i, sewLine, cutouts))),
            ],
            [.. draft.AllRuns.SelectMany((run, i) => RimNotches.Places(run, RimPath(draft, i, sewLine, cutouts)))],
            [.. draft.Drawn.Select(line => line with { Path = [.. line.Path.Select(Place)] }), .. draft.SplashLines.Select(line => new MarkLine([Place(line.From), Place(line.To)], SplashBand.LinePurpose)), .. draft.Runs.SelectMany((run, i) => run.Steps > 1 ? [] : WeldLines.Draw(edges[draft.Start(i)], run.Side, run.Class.MakeUp, cutLine))],
            cutouts,
            GrainPlacer.Place(label, folds),
            [.. draft.Faces.Select(face => face.Select(Place).ToImmutableArray())],
            Grid.Snap(label.Centre),
            label.Radius);
    }

    /// <summary>The cut line of a piece with one round edge: the circle that is larger by the allowance; null for others.</summary>
    private static ImmutableArray<Point2>? RoundCut(PieceDraft draft, Point2 anchor) => draft.Runs[0].Round is { } round
        ? Circles.Polygon(round.Centre - anchor, round.Radius + draft.Runs[0].Allowance)
        : null;

    private static IEnumerable<Notch> RoundMarks(
        PieceDraft draft, Func<Point2, Point2> place, ImmutableArray<Point2> sewLine, ImmutableArray<Cutout> cutouts) =>
        draft.AllRuns.SelectMany((run, i) => run.Round is not { } round
            ? []
            : RoundRim.Marks(run, i, round with { Centre = place(round.Centre) }, i < draft.Runs.Length ? sewLine : cutouts[i - draft.Runs.Length].Rim));

    /// <summary>The corners of a run in order; of a closed one the first stands at the end again.</summary>
    private static ImmutableArray<Point2> RimPath(PieceDraft draft, int run, ImmutableArray<Point2> sewLine, ImmutableArray<Cutout> cutouts) => run < draft.Runs.Length
        ? [.. Enumerable.Range(draft.Start(run), draft.Runs[run].Steps + 1).Select(corner => sewLine[corner % sewLine.Length])]
        : [.. cutouts[run - draft.Runs.Length].Rim, cutouts[run - draft.Runs.Length].Rim[0]];

    private static ImmutableArray<SewEdge> Edges(PieceDraft draft, ImmutableArray<Point2> sewLine) =>
    [
        .. draft.Runs.SelectMany((run, i) => Enumerable.Range(draft.Start(i), run.Steps)
            .Select(corner => new SewEdge(sewLine[corner], sewLine[(corner + 1) % sewLine.Length], run.Class.Role, run.Allowance)
            {
                // Sheet and mesh lie flat: nothing of theirs is folded onto them.
                IsFlat = draft.Kind is PieceKind.Pane or PieceKind.Screen,
            })),
    ];

    private static EdgeRun MakeRun(PieceDraft draft, DraftRun run, int i, ImmutableArray<SewEdge> edges) => new(
        draft.Start(i),
        draft.End(i),
        run.Class.Role,
        run.Class.Label,
        run.Class.MakeUp?.Name ?? string.Empty,
        run.Side,
        edges.Skip(draft.Start(i)).Take(run.Steps).Sum(edge => Point2.Distance(edge.From, edge.To)),
        run.Allowance);

    private static ImmutableArray<Notch> Notches(DraftRun run, int i, SewEdge edge, IReadOnlySet<string> bothWays) =>
        run.Class.Role != EdgeRole.Seam || run.Steps > 1
            ? []
            : NotchMaker.Make(edge, i, run.Side, run.Class.MakeUp!, MarkPattern.At(run.Class.LengthMm, run.Class.MarkCode, bothWays.Contains(run.Class.Label)));

    /// <summary>A point that is a corner of the sew line is that very corner, though rounding went another way.</summary>
    private static Point2 OnCorner(ImmutableArray<Point2> sewLine, Point2 point)
    {
        var nearest = sewLine.MinBy(corner => Point2.Distance(corner, point));
        return Point2.Distance(nearest, point) <= ArcSorter.SameLength ? nearest : point;
    }

    private sealed record Outlines(ImmutableArray<SewEdge> Edges, ImmutableArray<Point2> SewLine, ImmutableArray<Point2> CutLine);
}
