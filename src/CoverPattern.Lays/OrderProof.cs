using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Proof that lays keep to what the job asks of them: turns, flaws, locked pieces, rolls, table, plies.</summary>
/// <remarks>Beside <see cref="LayProof"/>, which knows lays and pieces alone. Everything is computed anew from the job.</remarks>
public static class OrderProof
{
    // Turns come from arithmetic on angles; this is a hundredth of a step on the grid at 100 m.
    private const double TurnTolerance = 1e-9;

    /// <summary>Everything that is not as the job asks; empty when all is.</summary>
    public static ImmutableArray<LayFinding> Check(Job job, ImmutableArray<Lay> lays, PieceSet pieces)
    {
        ArgumentNullException.ThrowIfNull(job);
        var patterns = LaidShapes.ById(pieces);
        var known = pieces.Pieces.ToDictionary(piece => piece.Label, piece => (Piece: piece, Pattern: patterns[piece.Pattern]), StringComparer.Ordinal);
        return
        [
            .. lays.SelectMany(lay => CheckOne(job, lay, known)),
            .. job.Cloths.SelectMany(cloth => Rolls(cloth, [.. lays.Where(lay => string.Equals(lay.Cloth, cloth.Name, StringComparison.Ordinal))])),
            .. Locked(job, lays),
        ];
    }

    private static IEnumerable<LayFinding> CheckOne(Job job, Lay lay, Dictionary<string, (Piece Piece, Pattern Pattern)> known)
    {
        if (job.Cloths.FirstOrDefault(cloth => string.Equals(cloth.Name, lay.Cloth, StringComparison.Ordinal)) is not { } cloth)
        {
            return [Finding(LayFault.NotAsAsked, string.Empty, $"Lay {lay.Number} is of {lay.Cloth}, which is no cloth of the job.")];
        }

        return Numbers(job, cloth, lay).Concat(Turns(job, cloth, lay)).Concat(Flaws(job, cloth, lay, known));
    }

    private static IEnumerable<LayFinding> Numbers(Job job, Cloth cloth, Lay lay)
    {
        (string What, double Has, double Asked)[] numbers =
        [
            ("roll width", lay.RollWidthMm, cloth.RollWidth.Millimetres),
            ("usable width", lay.UsableWidthMm, cloth.UsableWidth),
            ("end allowance", lay.EndAllowanceMm, job.Lay.EndAllowance.Millimetres),
            ("spacing", lay.SpacingMm, job.Lay.Spacing.Millimetres),
        ];
        foreach (var (what, has, asked) in numbers.Where(number => number.Has != number.Asked))
        {
            yield return Finding(LayFault.NotAsAsked, string.Empty, $"Lay {lay.Number} of {lay.Cloth} is for a {what} of {has:0.####} mm; the job asks for {asked:0.####} mm.");
        }

        if (lay.FaceDown != job.Lay.FaceDown || (lay.Plies > 1 && lay.FaceToFace != (job.Lay.Spread == PlySpread.FaceToFace)))
        {
            yield return Finding(LayFault.NotAsAsked, string.Empty, $"Lay {lay.Number} of {lay.Cloth} is for cloth that lies otherwise than the job says.");
        }

        if (lay.Plies < 1 || lay.Plies > job.Lay.Plies)
        {
            yield return Finding(LayFault.NotAsAsked, string.Empty, $"Lay {lay.Number} of {lay.Cloth} has {lay.Plies} plies; the job allows 1 to {job.Lay.Plies}.");
        }

        if (job.Lay.Table is { } table && lay.LengthMm > table.Millimetres + RegionTolerance)
        {
            yield return Finding(LayFault.TooLong, string.Empty, $"Lay {lay.Number} of {lay.Cloth} is {lay.LengthMm:0.0} mm long; the table has {table.Millimetres:0.0} mm.");
        }
    }

    private static double RegionTolerance => Nesting.RegionSweep.Tolerance;

    private static IEnumerable<LayFinding> Turns(Job job, Cloth cloth, Lay lay)
    {
        if (cloth.Nap != Nap.OneWay && job.Lay.Turns == TurnRule.Free)
        {
            yield break;
        }

        var period = cloth.Nap == Nap.OneWay ? 360 : 180;
        foreach (var place in lay.Placements.Where(place => !(Math.Abs(Math.IEEERemainder(place.TurnDegrees, period)) <= job.Lay.OffGrainDegrees + TurnTolerance)))
        {
            yield return Finding(LayFault.WrongTurn, place.Piece, $"Piece {place.Piece} is turned by {place.TurnDegrees:0.####} degrees; the job allows 0{(period == 180 ? " and 180" : string.Empty)}, {job.Lay.OffGrainDegrees:0.##} either way.");
        }
    }

    private static IEnumerable<LayFinding> Flaws(Job job, Cloth cloth, Lay lay, Dictionary<string, (Piece Piece, Pattern Pattern)> known)
    {
        if (lay.Roll < 0 || lay.Roll > cloth.Rolls.Length || (lay.Roll == 0 && !cloth.Rolls.IsEmpty))
        {
            yield return Finding(LayFault.NotAsAsked, string.Empty, $"Lay {lay.Number} of {lay.Cloth} is cut from roll {lay.Roll}; the job names {cloth.Rolls.Length}.");
            yield break;
        }

        foreach (var flaw in lay.Roll == 0 ? [] : cloth.Rolls[lay.Roll - 1].Flaws)
        {
            for (var ply = 0; ply < lay.Plies; ply++)
            {
                foreach (var finding in OnPly(job, lay, known, flaw, ply))
                {
                    yield return finding;
                }
            }
        }
    }

    /// <summary>Pieces of one ply on a flaw; plies come off the roll one after the other, the one on the table first and the top one last.</summary>
    private static IEnumerable<LayFinding> OnPly(Job job, Lay lay, Dictionary<string, (Piece Piece, Pattern Pattern)> known, FlawWish flaw, int ply)
    {
        var from = flaw.At.Millimetres - lay.FromMm - (ply * lay.LengthMm);
        var region = GridRegion.Of(
            Grid.Snap([new(from, flaw.Across.Millimetres), new(from + flaw.Long.Millimetres, flaw.Across.Millimetres), new(from + flaw.Long.Millimetres, flaw.Across.Millimetres + flaw.Wide.Millimetres), new(from, flaw.Across.Millimetres + flaw.Wide.Millimetres)]),
            []);
        foreach (var place in lay.Placements)
        {
            var label = place.Pieces.ElementAtOrDefault(lay.Plies - 1 - ply) ?? place.Piece;
            if (known.TryGetValue(label, out var one) && (flaw.Grade is not { } least || PieceGrades.Of(job.Lay, one.Piece, one.Pattern) < least)
                && LayProof.Region(place, one.Pattern) is { } laid && RegionPairs.InteriorsMeet(region, laid))
            {
                yield return Finding(LayFault.OnFlaw, label, $"Piece {label} lies on the flaw at {flaw.At.Typed} along and {flaw.Across.Typed} across of roll {lay.Roll} of {lay.Cloth}, which {(flaw.Grade is { } grade ? FormattableString.Invariant($"asks for grade {grade}") : "no piece may touch")}.");
            }
        }
    }

    /// <summary>Lays of one roll end on it and lie behind each other.</summary>
    private static IEnumerable<LayFinding> Rolls(Cloth cloth, ImmutableArray<Lay> lays)
    {
        foreach (var onRoll in lays.Where(lay => lay.Roll > 0 && lay.Roll <= cloth.Rolls.Length).GroupBy(lay => lay.Roll))
        {
            var end = 0.0;
            foreach (var lay in onRoll.OrderBy(lay => lay.FromMm))
            {
                if (lay.FromMm < end - RegionTolerance)
                {
                    yield return Finding(LayFault.TooLong, string.Empty, $"Lay {lay.Number} of {lay.Cloth} begins at {lay.FromMm:0.0} mm of roll {lay.Roll}; the lay before it ends at {end:0.0} mm.");
                }

                end = lay.FromMm + lay.ClothMm;
            }

            if (cloth.Rolls[onRoll.Key - 1].Length is { } length && end > length.Millimetres + RegionTolerance)
            {
                yield return Finding(LayFault.TooLong, string.Empty, $"The lays on roll {onRoll.Key} of {cloth.Name} end at {end:0.0} mm; it has {length.Typed}.");
            }
        }
    }

    private static IEnumerable<LayFinding> Locked(Job job, ImmutableArray<Lay> lays)
    {
        var places = job.Lay.Start?.Lays.SelectMany(lay => lay.Places.Select(place => (lay.Cloth, lay.Number, Place: place))).ToArray() ?? [];
        var now = lays.SelectMany(lay => lay.Placements.SelectMany(place => place.Pieces.Select(label => (Label: label, lay.Cloth, lay.Number, Place: place)))).ToLookup(entry => entry.Label, StringComparer.Ordinal);
        foreach (var label in job.Lay.Locked)
        {
            var was = places.FirstOrDefault(entry => string.Equals(entry.Place.Piece, label, StringComparison.Ordinal) || entry.Place.Under.Contains(label, StringComparer.Ordinal));
            if (was.Place is null || !now[label].Any(entry => entry.Number == was.Number && string.Equals(entry.Cloth, was.Cloth, StringComparison.Ordinal) && IsAt(entry.Place, was.Place)))
            {
                yield return Finding(LayFault.Moved, label, $"Piece {label} was to stay where {job.Lay.Start?.File} has it, and does not.");
            }
        }
    }

    private static bool IsAt(Placement place, EarlierPlace was) =>
        (place.X, place.Y, place.TurnDegrees, place.Mirrored) == (was.X, was.Y, was.TurnDegrees, was.Mirrored);

    private static LayFinding Finding(LayFault fault, string piece, FormattableString text) =>
        new(fault, piece, string.Empty, FormattableString.Invariant(text));
}
