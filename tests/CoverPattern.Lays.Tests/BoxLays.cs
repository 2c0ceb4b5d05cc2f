using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Tests;

/// <summary>Lays of equal boxes, small enough to be reckoned by hand.</summary>
internal static class BoxLays
{
    // Boxes of 400 x 300 of one pattern as drawn; on 970 mm of usable width three lie side by side. The ends take 20 mm each, the spacing is 3 mm.
    internal static readonly PieceSet Twelve = Boxes(12);

    internal static ImmutableArray<Lay> Plan(Job job, PieceSet pieces) => LayPlanner.Plan(job, pieces, null, CancellationToken.None);

    internal static Job Job(params ImmutableArray<RollWish> rolls)
    {
        var job = Samples.Job(Samples.Canvas with { Rolls = rolls }, isFaceDown: false);
        return job with { Lay = job.Lay with { Effort = 1 } };
    }

    internal static RollWish Roll(double millimetres) => new("", Mm(millimetres), []);

    internal static Measure Mm(double millimetres) => Samples.Mm(millimetres);

    internal static double Left(Placement place) => place.TurnDegrees == 0 ? place.X : place.X - 400;

    internal static EarlierLays Earlier(Lay lay) => new(
        "old.json",
        [new EarlierLay(lay.Cloth, lay.Number, [.. lay.Placements.Select(place => new EarlierPlace(place.Piece, place.Under, place.X, place.Y, place.TurnDegrees, place.Mirrored))]) { Roll = lay.Roll, FromMm = lay.FromMm, Plies = lay.Plies }]);

    internal static PieceSet Boxes(int count)
    {
        ImmutableArray<Point2> box = [new(0, 0), new(400, 0), new(400, 300), new(0, 300)];
        ImmutableArray<EdgeRun> runs = [.. Enumerable.Range(0, 4).Select(i => new EdgeRun(i, (i + 1) % 4, EdgeRole.Raw, "c1", string.Empty, EdgeSide.None, i % 2 == 0 ? 400 : 300, 0))];
        var pattern = new Pattern("T01", "canvas", PieceKind.Facet, count, box, box, runs, [], [], [], [], [], new(default, new(9, 0)), [box], new(150, 100), 20);
        return new PieceSet([pattern], [.. Enumerable.Range(1, count).Select(i => new Piece(FormattableString.Invariant($"P{i:00}"), "T01", false, [.. Enumerable.Range(0, 4).Select(k => new PieceRun(FormattableString.Invariant($"E{i}.{k}"), EdgeRole.Raw, Partner: null))], ["F1"]))]);
    }
}
