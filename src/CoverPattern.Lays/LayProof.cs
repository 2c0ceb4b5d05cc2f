using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Proof of finished lays: every pattern is laid again - mirrored, turned, snapped, shifted - and tested in whole numbers.</summary>
public static class LayProof
{
    /// <summary>Everything wrong with all lays of a job, pieces that lie on none included; empty when they are proved.</summary>
    public static ImmutableArray<LayFinding> Check(ImmutableArray<Lay> lays, PieceSet pieces)
    {
        var counts = lays.SelectMany(lay => lay.Placements).SelectMany(place => place.Pieces).GroupBy(piece => piece, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        var missing = pieces.Pieces.Where(piece => !counts.ContainsKey(piece.Label))
            .Select(piece => Finding(LayFault.Missing, piece.Label, $"Piece {piece.Label} lies on no lay."));
        var twice = pieces.Pieces.Where(piece => counts.GetValueOrDefault(piece.Label) > 1)
            .Select(piece => Finding(LayFault.Twice, piece.Label, $"Piece {piece.Label} lies {counts[piece.Label]} times."));
        return [.. missing, .. twice, .. lays.SelectMany(lay => Check(lay, pieces).Where(finding => finding.Fault != LayFault.Twice))];
    }

    /// <summary>Everything wrong with one lay; it need not hold all pieces of its cloth, see the other overload.</summary>
    public static ImmutableArray<LayFinding> Check(Lay lay, PieceSet pieces)
    {
        var findings = ImmutableArray.CreateBuilder<LayFinding>();
        var known = KnownPieces(lay, pieces);
        findings.AddRange(WrongLabels(lay, known));
        findings.AddRange(WrongPlies(lay, known));
        var laid = lay.Placements.Where(p => known.ContainsKey(p.Piece)).Select(p => (Place: p, Region: Region(p, known[p.Piece].Pattern))).ToArray();
        findings.AddRange(laid.SelectMany(one => WrongSides(lay, one.Place, known)));
        findings.AddRange(laid.SelectMany(one => WrongPlaces(lay, one.Place, one.Region)));
        var tested = laid.Where(one => one.Region is not null).ToArray();
        var clashes = RegionSweep.Clashes([.. tested.Select(one => one.Region!)], lay.SpacingMm);
        findings.AddRange(clashes.Select(clash => Clash(lay, (tested[clash.First].Place.Piece, tested[clash.Second].Place.Piece), clash.Distance)));
        var end = tested.Length > 0 ? tested.Max(one => one.Region!.High.ToPoint().X) : lay.EndAllowanceMm;
        if (!(Math.Abs(end + lay.EndAllowanceMm - lay.LengthMm) <= RegionSweep.Tolerance))
        {
            findings.Add(Finding(LayFault.WrongLength, string.Empty, $"The lay says it is {lay.LengthMm:F4} mm long; its pieces end at {end:F4} mm and the end allowance is {lay.EndAllowanceMm:F4} mm."));
        }

        return findings.ToImmutable();
    }

    private static Dictionary<string, (Piece Piece, Pattern Pattern)> KnownPieces(Lay lay, PieceSet pieces)
    {
        var patterns = LaidShapes.ById(pieces);
        return pieces.Pieces.Where(piece => string.Equals(patterns[piece.Pattern].Cloth, lay.Cloth, StringComparison.Ordinal))
            .ToDictionary(piece => piece.Label, piece => (piece, patterns[piece.Pattern]), StringComparer.Ordinal);
    }

    private static IEnumerable<LayFinding> WrongLabels(Lay lay, Dictionary<string, (Piece Piece, Pattern Pattern)> known) =>
        lay.Placements.SelectMany(place => place.Pieces).GroupBy(piece => piece, StringComparer.Ordinal)
            .Where(group => group.Count() > 1 || !known.ContainsKey(group.Key))
            .Select(group => known.ContainsKey(group.Key)
                ? Finding(LayFault.Twice, group.Key, $"Piece {group.Key} lies {group.Count()} times.")
                : Finding(LayFault.Unknown, group.Key, $"No piece of cloth {lay.Cloth} is called {group.Key}."));

    /// <summary>Each place gives one piece a ply, all of one pattern.</summary>
    private static IEnumerable<LayFinding> WrongPlies(Lay lay, Dictionary<string, (Piece Piece, Pattern Pattern)> known)
    {
        foreach (var place in lay.Placements)
        {
            if (place.Pieces.Length != lay.Plies)
            {
                yield return Finding(LayFault.WrongPlies, place.Piece, $"At {place.Piece} {place.Pieces.Length} pieces are cut; the lay has {lay.Plies} plies.");
            }

            foreach (var under in place.Under.Where(under => known.TryGetValue(under, out var other) && known.TryGetValue(place.Piece, out var top) && !string.Equals(other.Piece.Pattern, top.Piece.Pattern, StringComparison.Ordinal)))
            {
                yield return Finding(LayFault.WrongPlies, under, $"Piece {under} is cut under {place.Piece}, which has another pattern.");
            }
        }
    }

    /// <summary>Each piece lies the right side up on its ply.</summary>
    private static IEnumerable<LayFinding> WrongSides(Lay lay, Placement place, Dictionary<string, (Piece Piece, Pattern Pattern)> known)
    {
        foreach (var (ply, label) in place.Pieces.Index().Where(entry => known.ContainsKey(entry.Item)))
        {
            var isDown = lay.FaceDown != (lay.FaceToFace && ply % 2 == 1);
            var mustMirror = known[label].Piece.Mirrored != isDown;
            if (place.Mirrored != mustMirror)
            {
                yield return Finding(LayFault.WrongSide, label, $"Piece {label} lies the wrong side up: on cloth lying face {(isDown ? "down" : "up")} its pattern must {(mustMirror ? string.Empty : "not ")}be mirrored.");
            }
        }
    }

    private static IEnumerable<LayFinding> WrongPlaces(Lay lay, Placement place, GridRegion? region)
    {
        if (region is null)
        {
            yield return Finding(LayFault.Outside, place.Piece, $"Piece {place.Piece} lies beyond {Grid.LargestMillimetres / 1000:F0} m or nowhere; it was not tested further.");
            yield break;
        }

        if (Grid.Snap(new Point2(place.X, place.Y)) != new Point2(place.X, place.Y))
        {
            yield return Finding(LayFault.OffGrid, place.Piece, $"Piece {place.Piece} is shifted by {place.X:R}, {place.Y:R} mm, which is not on the grid.");
        }

        var (low, high) = (region.Low.ToPoint(), region.High.ToPoint());
        var margin = (lay.RollWidthMm - lay.UsableWidthMm) / 2;
        if (low.X < lay.EndAllowanceMm || low.Y < margin || high.Y > lay.RollWidthMm - margin || high.X > lay.LengthMm - lay.EndAllowanceMm + RegionSweep.Tolerance)
        {
            yield return Finding(LayFault.Outside, place.Piece, $"Piece {place.Piece} lies from {low.X:F4} to {high.X:F4} mm along the roll and from {low.Y:F4} to {high.Y:F4} mm across; allowed are {lay.EndAllowanceMm:F4} to {lay.LengthMm - lay.EndAllowanceMm:F4} and {margin:F4} to {lay.RollWidthMm - margin:F4} mm.");
        }
    }

    /// <summary>The piece as it lies; null when it lies beyond the grid.</summary>
    internal static GridRegion? Region(Placement place, Pattern pattern)
    {
        var turn = RigidMap.FromDegrees(place.TurnDegrees, default, place.Mirrored);
        var rings = pattern.Cutouts.Select(cutout => cutout.CutLine).Prepend(pattern.CutLine).Select(ring => Laid(ring, turn, place)).ToArray();
        var isInReach = rings.All(ring => ring.All(p => Math.Abs(p.X) <= Grid.LargestMillimetres && Math.Abs(p.Y) <= Grid.LargestMillimetres));
        return isInReach ? GridRegion.Of(rings[0], rings.Skip(1)) : null;
    }

    private static Point2[] Laid(ImmutableArray<Point2> ring, RigidMap turn, Placement place)
    {
        if (!double.IsFinite(place.TurnDegrees))
        {
            return [new Point2(double.NaN, double.NaN)];
        }

        var laid = ring.Select(p => Grid.Snap(turn.Apply(p)) + new Point2(place.X, place.Y));
        return [.. place.Mirrored ? laid.Reverse() : laid];
    }

    private static LayFinding Clash(Lay lay, (string First, string Second) pair, double distance) => distance < 0
        ? Finding(LayFault.Overlap, pair.First, $"Pieces {pair.First} and {pair.Second} overlap.") with { Other = pair.Second }
        : Finding(LayFault.TooClose, pair.First, $"Pieces {pair.First} and {pair.Second} are {distance:F4} mm apart; {lay.SpacingMm:F4} mm are asked for.") with { Other = pair.Second };

    private static LayFinding Finding(LayFault fault, string piece, FormattableString text) =>
        new(fault, piece, string.Empty, FormattableString.Invariant(text));
}
