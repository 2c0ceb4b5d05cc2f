using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays that the job keeps: checked and used, never searched again.</summary>
internal static class KeptLays
{
    /// <summary>The kept lays of a cloth; none when the job keeps none of it.</summary>
    /// <exception cref="EarlierLaysRefusedException">They are not right for these pieces, or not as the job asks.</exception>
    public static ImmutableArray<Lay> Of(Job job, Cloth cloth, PieceSet pieces)
    {
        if (job.Lay.Keep is not { } keep)
        {
            return [];
        }

        var patterns = LaidShapes.ById(pieces);
        var maker = new LayMaker(job, cloth, patterns);
        ImmutableArray<Lay> lays = [.. keep.Lays.Where(lay => string.Equals(lay.Cloth, cloth.Name, StringComparison.Ordinal)).OrderBy(lay => lay.Number).Select(lay => Taken(job, cloth, maker, lay, pieces))];
        if (lays.IsEmpty)
        {
            return [];
        }

        var own = pieces with { Pieces = [.. pieces.Pieces.Where(piece => string.Equals(patterns[piece.Pattern].Cloth, cloth.Name, StringComparison.Ordinal))] };
        ImmutableArray<LayFinding> findings = [.. LayProof.Check(lays, own), .. OrderProof.Check(job with { Lay = job.Lay with { Locked = [] } }, lays, own)];
        return findings.IsEmpty ? lays : throw new EarlierLaysRefusedException(keep.File, "kept", findings);
    }

    private static Lay Taken(Job job, Cloth cloth, LayMaker maker, EarlierLay lay, PieceSet pieces)
    {
        var patterns = LaidShapes.ById(pieces);
        var patternOf = pieces.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        ImmutableArray<Placement> placements = [.. lay.Places.Select(place => new Placement(place.Piece, place.X, place.Y, place.TurnDegrees, place.Mirrored) { Under = place.Under })];
        var end = placements.Where(place => patternOf.ContainsKey(place.Piece)).Select(place => LayMaker.End(place, patternOf[place.Piece])).DefaultIfEmpty(job.Lay.EndAllowance.Millimetres).Max();
        var taken = maker.Lay(placements, end + job.Lay.EndAllowance.Millimetres);
        var spot = lay.Roll > 0 && lay.Roll <= cloth.Rolls.Length ? LaySpot.OnPlies(cloth, lay.Roll, lay.FromMm, lay.Plies, (taken.LengthMm, taken.LengthMm)) : LaySpot.Anywhere with { Roll = lay.Roll };
        return taken with
        {
            Number = lay.Number,
            Roll = spot.Roll,
            RollName = spot.RollName,
            FromMm = spot.FromMm,
            Plies = lay.Plies,
            FaceToFace = lay.Plies > 1 && job.Lay.Spread == PlySpread.FaceToFace,
            Flaws = [.. spot.Flaws.Where(flaw => flaw.X < taken.LengthMm)],
            Making = maker.Making(LayOrigin.Kept, null),
        };
    }
}
