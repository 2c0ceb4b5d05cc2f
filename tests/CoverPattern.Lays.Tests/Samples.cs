using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Tests;

/// <summary>A job and pieces small enough to count by hand.</summary>
internal static class Samples
{
    public static readonly Cloth Canvas = new("canvas", Mm(1000), Mm(10), Mm(5), 340, Nap.None, HasFace: true);

    public static Job Job(Cloth cloth, TurnRule turns = TurnRule.Grain, bool isFaceDown = true) => new(
        1,
        "sample",
        new DateOnly(2026, 1, 5),
        1,
        new FrameWish(FrameFamily.Icosahedron, 3, 5, "5/8", FrameMeasure.Diameter, Mm(5000)),
        new StandOffWish(Mm(10), Mm(10), Mm(0)),
        0,
        new SkirtWish(Mm(60)),
        new HemWish(Mm(30), Mm(10)),
        SeamWish.Of(MakeUpForm.Felled, Mm(12)),
        [cloth],
        new LayWish(Mm(3), Mm(20), turns, isFaceDown, 5, 1),
        [],
        []);

    /// <summary>Two covers, each of two right-angled pieces sewn along their long edges, the second a mirror twin; hems of 400 mm.</summary>
    public static PieceSet TwoCovers()
    {
        // Legs 400 and 300, slope 500, from the corner at the origin; a window of 60 x 40 in it.
        ImmutableArray<Point2> triangle = [new(0, 0), new(400, 0), new(0, 300)];
        ImmutableArray<Point2> window = [new(30, 30), new(30, 70), new(90, 70), new(90, 30)];
        ImmutableArray<EdgeRun> runs =
        [
            new(0, 1, EdgeRole.Hem, "c1", string.Empty, EdgeSide.None, 400, 0),
            new(1, 2, EdgeRole.Seam, "c2", "felled", EdgeSide.Over, 500, 0),
            new(2, 0, EdgeRole.Bound, "c3", string.Empty, EdgeSide.None, 300, 0),
        ];
        var cutout = new Cutout("window", window, window, new EdgeRun(0, 0, EdgeRole.Rim, "c4", string.Empty, EdgeSide.None, 200, 0));
        var pattern = new Pattern("T01", "canvas", PieceKind.Facet, 4, triangle, triangle, runs, [], [], [], [], [cutout], new(default, new(9, 0)), [triangle], new(150, 100), 20);
        return new PieceSet([pattern], [.. new[] { "C1", "C2" }.SelectMany(cover => new[] { Piece(cover, "P1", "P2", false), Piece(cover, "P2", "P1", true) })]);
    }

    public static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    private static Piece Piece(string cover, string label, string partner, bool isMirrored) => new(
        $"{cover} {label}",
        "T01",
        isMirrored,
        [
            new(label == "P1" ? "H1" : "H2", EdgeRole.Hem, Partner: null),
            new("S1", EdgeRole.Seam, new PartnerRun($"{cover} {partner}", 1)),
            new(label == "P1" ? "B1" : "B2", EdgeRole.Bound, Partner: null),
            new(label == "P1" ? "R1" : "R2", EdgeRole.Rim, Partner: null),
        ],
        ["F1"]);
}
