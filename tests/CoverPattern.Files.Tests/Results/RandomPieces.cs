using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CsCheck;

namespace CoverPattern.Files.Tests.Results;

/// <summary>Piece sets and lays of any content that hang together by name and index; their shapes mean nothing.</summary>
internal static class RandomPieces
{
    // Numbers of the grid, numbers that need all digits, numbers that want an exponent.
    private static readonly Gen<double> Number = Gen.OneOf(
        Gen.Int[-134_144_000, 134_144_000].Select(steps => steps / 1024.0), Gen.Double[-1e6, 1e6], Gen.Double[-1e-9, 1e-9]);

    private static readonly Gen<double> Length = Number.Select(Math.Abs);

    private static readonly Gen<Point2> Point = Gen.Select(Number, Number, (x, y) => new Point2(x, y));

    private static readonly Gen<ImmutableArray<Point2>> Ring = List(Point, 3, 8);

    private static readonly Gen<string> Word = Gen.Char["abcXYZ019 .\"\\/<&'äß窓😀\n\t"].Array[0, 6].Select(letters => new string(letters));

    private static readonly Gen<FoldLine> Fold = Gen.Select(Point, Point, (from, to) => new FoldLine(from, to));

    private static readonly Gen<DrillMark> Drill = Gen.Select(Point, Word, Gen.Bool, (at, purpose, pierced) => new DrillMark(at, purpose, pierced));

    private static readonly Gen<MarkLine> Line = Gen.Select(List(Point, 2, 4), Word, (path, purpose) => new MarkLine(path, purpose));

    public static Gen<PieceSet> Set { get; } = Gen.Int[0, 4].SelectMany(count =>
        All(Enumerable.Range(0, count), Pattern).SelectMany(patterns =>
            Gen.Int[0, Math.Max(patterns.Length - 1, 0)].Array[0, patterns.Length == 0 ? 0 : 6].SelectMany(choice =>
                All(Enumerable.Range(0, choice.Length), i => Piece(i, choice, patterns)).Select(pieces => new PieceSet(patterns, pieces)))));

    public static Gen<ImmutableArray<Lay>> Lays { get; } = Gen.Int[0, 3].SelectMany(count => All(Enumerable.Range(0, count), Lay));

    private static Gen<ImmutableArray<T>> List<T>(Gen<T> item, int least, int most) =>
        item.Array[least, most].Select(items => items.ToImmutableArray());

    /// <summary>One of each generator, in order.</summary>
    private static Gen<ImmutableArray<T>> All<T>(IEnumerable<int> indices, Func<int, Gen<T>> of) =>
        indices.Aggregate(Gen.Const(ImmutableArray<T>.Empty), (before, i) => Gen.Select(before, of(i), (list, item) => list.Add(item)));

    private static Gen<Pattern> Pattern(int index) => Ring.SelectMany(sewLine =>
        Gen.Select(
            All(Enumerable.Range(0, sewLine.Length), i => Run(i, sewLine.Length)),
            List(Notch(sewLine.Length), 0, 4),
            Gen.Select(List(Fold, 0, 2), List(Drill, 0, 2), List(Line, 0, 2), List(Cutout, 0, 2), (folds, drills, lines, cutouts) => (folds, drills, lines, cutouts)),
            Gen.Select(Ring, List(Ring, 1, 3), Fold, Point, Length, (cut, facets, grain, spot, radius) => (cut, facets, grain, spot, radius)),
            Gen.Select(Word, Gen.Enum<PieceKind>(), Gen.Int[0, 1000], (cloth, kind, quantity) => (cloth, kind, quantity)),
            (runs, notches, inner, rest, head) => new Pattern(
                $"T{index}{head.cloth}", "c" + head.cloth, head.kind, head.quantity, sewLine, rest.cut, runs, inner.folds, notches, inner.drills,
                inner.lines, inner.cutouts, new GrainLine(rest.grain.From, rest.grain.To), rest.facets, rest.spot, rest.radius)));

    private static Gen<EdgeRun> Run(int from, int corners) => Gen.Select(
        Gen.Enum<EdgeRole>(), Word, Word, Gen.Enum<EdgeSide>(), Length, Length,
        (role, arcClass, makeUp, side, length, allowance) => new EdgeRun(from, (from + 1) % corners, role, arcClass, makeUp, side, length, allowance));

    private static Gen<Cutout> Cutout => Gen.Select(
        Word, Ring, Ring, Run(0, 1), (purpose, rim, cut, run) => new Cutout(purpose, rim, cut, run));

    private static Gen<Notch> Notch(int runs) => Gen.Select(
        Gen.Int[0, runs - 1], Length, Gen.Enum<NotchForm>(), Point, Point, Point,
        (run, at, form, on, outer, inner) => new Notch(run, at, form, on, outer, inner));

    private static Gen<Piece> Piece(int index, int[] choice, ImmutableArray<Pattern> patterns)
    {
        var pattern = patterns[choice[index]];
        return Gen.Select(
            Gen.Bool,
            List(PieceRun(choice, patterns), pattern.Runs.Length + pattern.Cutouts.Length, pattern.Runs.Length + pattern.Cutouts.Length),
            List(Word, pattern.Facets.Length, pattern.Facets.Length),
            (mirrored, runs, facets) => new Piece($"P{index} ä", pattern.Id, mirrored, runs, facets));
    }

    private static Gen<PieceRun> PieceRun(int[] choice, ImmutableArray<Pattern> patterns) => Gen.Select(
        Word, Gen.Enum<EdgeRole>(), Gen.Bool, Gen.Int[0, choice.Length - 1],
        (arc, role, hasPartner, other) => new PieceRun(
            arc, role, hasPartner ? new PartnerRun($"P{other} ä", patterns[choice[other]].Runs.Length - 1) : null));

    private static Gen<Lay> Lay(int index) => Gen.Select(
        Word, Length, Gen.Double[0, 1],
        Gen.Select(Length, Length, Length, Gen.Bool, (end, length, spacing, faceDown) => (end, length, spacing, faceDown)),
        Gen.Select(Number, Number, Number, Gen.Bool, Gen.Int[0, 3], (x, y, turn, mirrored, under) => (x, y, turn, mirrored, under)).Array[0, 5],
        Making,
        (cloth, roll, usable, rest, places, making) => new Lay(
            "c" + cloth, roll, roll * usable, rest.end, rest.length, rest.spacing, rest.faceDown,
            [.. places.Select((at, i) => new Placement($"P{index}.{i}", at.x, at.y, at.turn, at.mirrored) { Under = [.. Enumerable.Range(0, at.under).Select(ply => $"P{index}.{i}.{ply}")] })], index + 1)
        {
            Roll = places.Length,
            RollName = cloth,
            FromMm = rest.length,
            Plies = 1 + places.Length,
            FaceToFace = rest.faceDown,
            Flaws = [.. places.Select(at => new LayFlaw(at.x, at.y, rest.end, rest.length, at.under == 0 ? null : at.under))],
            Making = making,
        });

    private static readonly Gen<LayMaking> Making = Gen.Select(
        Gen.Enum<LayOrigin>(), Gen.Enum<LayStyle>(), Word, Length, Gen.Bool,
        (origin, style, method, length, inHoles) => new LayMaking(origin, style, method, "half", length, inHoles) { TightMm = inHoles ? length : null });
}
