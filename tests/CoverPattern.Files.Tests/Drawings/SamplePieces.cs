using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>Made-up pieces with one of everything: openings, folds, drills, both notch forms, mirrored twins, names in other scripts.</summary>
internal static class SamplePieces
{
    /// <summary>A triangle, one with a window and a drill, a strip with a fold, a small one. Two pieces of each of the first two.</summary>
    public static PieceSet Set { get; } = new(
        [Triangle(), Window(), Strip(), Small()],
        [
            Piece("P1.01", "T01", mirrored: false, partner: "P1.02"),
            Piece("P1.02", "T01", mirrored: true, partner: "P1.01"),
            Piece("Tür 1 \"süd\"", "T02", mirrored: false, partner: null),
            Piece("窓 2 <&>", "T02", mirrored: true, partner: null),
            Piece("P2.01", "T03", mirrored: false, partner: null),
            Piece("P3.01", "T04", mirrored: true, partner: null),
        ]);

    /// <summary>All pieces on one roll in the four kinds of turn, two of them mirrored; nothing overlaps.</summary>
    public static Lay Lay { get; } = new(
        "canvas",
        RollWidthMm: 1500,
        UsableWidthMm: 1460,
        EndAllowanceMm: 30,
        LengthMm: 5000.5,
        SpacingMm: 5,
        FaceDown: true,
        [
            new Placement("P1.01", 60, 860, 0, Mirrored: true),
            new Placement("P1.02", 1960, 60, 180, Mirrored: true),
            new Placement("Tür 1 \"süd\"", 2800, 60, 90, Mirrored: false),
            new Placement("窓 2 <&>", 3700, 800, 180, Mirrored: false),
            new Placement("P2.01", 3800, 200, 33.3, Mirrored: true),
            new Placement("P3.01", 3000, 1200, 180, Mirrored: true),
        ]);

    public static Pattern PatternOf(string piece) =>
        Set.Patterns.Single(pattern => pattern.Id == Set.Pieces.Single(p => p.Label == piece).Pattern);

    public static RigidMap MapOf(Placement placement) =>
        RigidMap.FromDegrees(placement.TurnDegrees, new Point2(placement.X, placement.Y), placement.Mirrored);

    private static Pattern Triangle() => Shape("T01", [new(0, 0), new(900, 0), new(450, 780)], [20, 10, 10], new Point2(450, 240), 190);

    private static Pattern Window()
    {
        var plain = Shape("T02", [new(0, 0), new(800.5, 0), new(800.5, 700.25), new(0, 600)], [15, 15, 40, 15], new Point2(400, 120), 90);
        return plain with
        {
            Cutouts = [Hole([new(250, 250), new(250, 500), new(550, 500), new(550, 250)])],
            Drills = [new DrillMark(new Point2(650, 580), "Schlaufe größer"), new DrillMark(new Point2(700, 580), "pivot", IsPierced: true)],
            Notches = [.. plain.Notches.Select(notch => notch with { Form = NotchForm.Tick })],
        };
    }

    private static Cutout Hole(ImmutableArray<Point2> ring) =>
        new("window", ring, ring, new EdgeRun(0, 0, EdgeRole.Rim, "c9", string.Empty, EdgeSide.None, 1100, 0));

    private static Pattern Strip()
    {
        var plain = Shape("T03", [new(0, 0), new(1200, 0), new(1180, 90), new(20, 90)], [40, 10, 0, 10], new Point2(300, 58), 26);
        return plain with
        {
            Folds = [new FoldLine(new Point2(0, 0), new Point2(1180, 90))],
            Grain = new GrainLine(new Point2(700, 25), new Point2(900, 25)),
        };
    }

    private static Pattern Small() => Shape("T04", [new(0, 0), new(60, 0), new(30, 50)], [5, 5, 5], new Point2(30, 18), 14);

    /// <summary>A pattern whose grain line runs through its label spot and whose every edge has one notch in its middle.</summary>
    private static Pattern Shape(string id, ImmutableArray<Point2> sewLine, double[] allowances, Point2 spot, double radius)
    {
        var half = new Point2(radius * 0.8, 0);
        return new Pattern(
            id, "canvas", PieceKind.Facet, 2, sewLine, CutLine(sewLine, allowances), Runs(sewLine, allowances), Folds: [],
            [.. sewLine.Select((_, i) => MiddleNotch(sewLine, allowances, i))], Drills: [], Lines: [], Cutouts: [],
            new GrainLine(spot - half, spot + half), Facets: [sewLine], spot, radius);
    }

    private static ImmutableArray<EdgeRun> Runs(ImmutableArray<Point2> sewLine, double[] allowances) =>
    [
        .. sewLine.Select((corner, i) => new EdgeRun(
            i, (i + 1) % sewLine.Length, i == 0 ? EdgeRole.Hem : EdgeRole.Seam, $"c{i}", string.Empty, (EdgeSide)(i % 3),
            Point2.Distance(corner, sewLine[(i + 1) % sewLine.Length]), allowances[i])),
    ];

    private static Notch MiddleNotch(ImmutableArray<Point2> sewLine, double[] allowances, int run)
    {
        var (from, to) = (sewLine[run], sewLine[(run + 1) % sewLine.Length]);
        var middle = Grid.Snap(Point2.Between(from, to, 0.5));
        var outward = -1 * (to - from).Unit().QuarterTurned();
        var outer = Grid.Snap(middle + (allowances[run] * outward));
        return new Notch(run, Point2.Distance(from, middle), NotchForm.Slit, middle, outer, Grid.Snap(outer - (4 * outward)));
    }

    /// <summary>The sew line's edges shifted outward, each cut with the next.</summary>
    private static ImmutableArray<Point2> CutLine(ImmutableArray<Point2> sewLine, double[] allowances)
    {
        var corners = new List<Point2>();
        for (var i = 0; i < sewLine.Length; i++)
        {
            var before = (i + sewLine.Length - 1) % sewLine.Length;
            var (into, outOf) = ((sewLine[i] - sewLine[before]).Unit(), (sewLine[(i + 1) % sewLine.Length] - sewLine[i]).Unit());
            var (a, b) = (sewLine[i] - (allowances[before] * into.QuarterTurned()), sewLine[i] - (allowances[i] * outOf.QuarterTurned()));
            corners.Add(a + (Point2.Cross(b - a, outOf) / Point2.Cross(into, outOf) * into));
        }

        return Grid.Snap(corners);
    }

    private static Piece Piece(string label, string pattern, bool mirrored, string? partner)
    {
        var runs = pattern is "T01" or "T04" ? 3 : 4;
        return new Piece(
            label, pattern, mirrored,
            [
                .. Enumerable.Range(0, runs).Select(i => i == 1 && partner is not null
                    ? new PieceRun("S001", EdgeRole.Seam, new PartnerRun(partner, 1))
                    : new PieceRun($"H{i}", EdgeRole.Hem, Partner: null)),
            ],
            ["F1.01"]);
    }
}
