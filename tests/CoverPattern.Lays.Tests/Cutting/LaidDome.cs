using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Lays.Tests.Cutting;

/// <summary>Lays to plan the tool's way over.</summary>
internal static class LaidDome
{
    /// <summary>A real dome, laid with little search.</summary>
    internal static (Lay Lay, PieceSet Pieces) Make(int frequency, int rows, double radius)
    {
        var job = Samples.Job(Samples.Canvas with { RollWidth = Samples.Mm(2500) }) with
        {
            Covers = 1,
            Lay = new LayWish(Samples.Mm(3), Samples.Mm(20), TurnRule.Grain, FaceDown: true, 1, 1),
            Frame = new FrameWish(FrameFamily.Icosahedron, frequency, rows, string.Empty, FrameMeasure.Radius, Samples.Mm(radius)),
        };
        var shell = ShellFitter.Fit(job, FrameBuilder.Build(job.Frame));
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
        var pieces = PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut)).Set;
        return (LayPlanner.Plan(job, pieces, null, CancellationToken.None)[0], pieces);
    }

    /// <summary>What a pen may draw on the pieces: sew lines, folds and grain lines where they lie.</summary>
    internal static ImmutableArray<Stroke> Marks(Lay lay, PieceSet pieces)
    {
        var patterns = pieces.Pieces.ToDictionary(piece => piece.Label, piece => pieces.Patterns.Single(pattern => pattern.Id == piece.Pattern));
        return
        [
            .. lay.Placements.SelectMany(place =>
            {
                var (pattern, map) = (patterns[place.Piece], RigidMap.FromDegrees(place.TurnDegrees, new Point2(place.X, place.Y), place.Mirrored));
                ImmutableArray<ImmutableArray<Point2>> lines =
                [
                    pattern.SewLine.Add(pattern.SewLine[0]), [pattern.Grain.From, pattern.Grain.To], .. pattern.Folds.Select(fold => ImmutableArray.Create(fold.From, fold.To)),
                    .. pattern.Drills.SelectMany(drill => new[] { ImmutableArray.Create(drill.At - new Point2(4, 0), drill.At + new Point2(4, 0)), [drill.At - new Point2(0, 4), drill.At + new Point2(0, 4)] }),
                ];
                return lines.Select(line => new Stroke(place.Piece, StrokeUse.Draw, "mark", map.Apply(line)));
            }),
        ];
    }

    /// <summary>Boxes of a length in columns of two.</summary>
    internal static (Lay Lay, PieceSet Pieces) Columns(int columns, double length, double gap = 10)
    {
        ImmutableArray<Point2> box = [new(0, 0), new(length, 0), new(length, 300), new(0, 300)];
        ImmutableArray<EdgeRun> runs = [.. box.Select((_, i) => new EdgeRun(i, (i + 1) % 4, EdgeRole.Bound, "c1", string.Empty, EdgeSide.None, 300, 0))];
        var pattern = new Pattern("T01", "canvas", PieceKind.Facet, 2 * columns, box, box, runs, [], [], [], [], [], new(new(10, 10), new(50, 10)), [box], new(100, 100), 50);
        var labels = Enumerable.Range(0, 2 * columns).Select(i => $"P{i:D2}").ToArray();
        var pieces = labels.Select(label => new Piece(label, "T01", false, [.. runs.Select((_, i) => new PieceRun(label + i, EdgeRole.Bound, null))], ["F1"]));
        var places = labels.Select((label, i) => new Placement(label, 20 + ((length + gap) * (i / 2)), 20 + ((gap == 0 ? 300 : 320) * (i % 2)), 0, false));
        return (new Lay("canvas", 1000, 970, 20, 40 + ((length + gap) * columns), Math.Min(gap, 3), false, [.. places]), new PieceSet([pattern], [.. pieces]));
    }
}
