using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Folds one piece over the cover: each facet stiffly onto the true face of its label, face side out.</summary>
/// <remarks>A facet of equal sides fits in several turns; it takes the one in which most of its edges meet the pieces they name.</remarks>
internal sealed class PieceLifter
{
    private readonly SewingOrder order;
    private readonly TrueCover cover;
    private readonly Dictionary<string, SewnPattern> patterns;
    private readonly Dictionary<string, SewnPiece> pieces;

    internal PieceLifter(SewingOrder order, TrueCover cover, SewnFile file)
    {
        this.order = order;
        this.cover = cover;
        patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        pieces = file.Pieces.ToDictionary(piece => piece.Label);
    }

    internal PlacedPiece Lift(SewnPiece piece)
    {
        var pattern = patterns[piece.Pattern];
        var edges = PatternEdges.Of(pattern);
        TrueFace[] faces = [.. piece.Facets.Select(label => cover.Faces[label])];
        return new PlacedPiece(piece, pattern, edges, faces, Lay(piece, pattern, edges, faces));
    }

    /// <summary>What is wrong with a piece once it lies on the cover.</summary>
    internal IEnumerable<string> Faults(PlacedPiece placed)
    {
        for (var facet = 0; facet < placed.Faces.Count; facet++)
        {
            foreach (var fault in FacetFaults(placed, facet))
            {
                yield return fault;
            }
        }

        foreach (var fault in FoldFaults(placed).Concat(GrainFaults(placed)))
        {
            yield return fault;
        }

        if (placed.Piece.Mirrored && order.HasFace)
        {
            yield return $"Piece {placed.Piece.Label} is mirrored, so the cloth's face would lie inside.";
        }
    }

    /// <summary>
    /// Lays the first facet in each way that fits and the others over the folds they share with one that lies already; the way
    /// in which most edges meet the pieces that they name is taken.
    /// </summary>
    private Placement[] Lay(SewnPiece piece, SewnPattern pattern, PatternEdges edges, TrueFace[] faces)
    {
        int Misfits(Placement way, int facet) => Enumerable.Range(0, pattern.Facets[facet].Count).Count(edge => EdgeFault(piece, edges, (faces[facet], facet), way, edge) is not null);
        return Ways(piece, pattern.Facets[0], faces[0])
            .Select(first => LayFrom(piece, pattern, edges, faces, first))
            .MinBy(ways => ways.Select(Misfits).Sum())!;
    }

    private static Placement[] LayFrom(SewnPiece piece, SewnPattern pattern, PatternEdges edges, TrueFace[] faces, Placement first)
    {
        var laid = new Placement?[faces.Length];
        laid[0] = first;
        while (Array.IndexOf(laid, null) >= 0)
        {
            // Over a fold to a facet that lies; what hangs on nothing is laid as it fits, and other checks will tell.
            var next = Enumerable.Range(0, faces.Length).Where(facet => laid[facet] is null)
                .Select(facet => (Facet: facet, Fold: edges.FoldAt[facet].FirstOrDefault(fold => fold >= 0 && Neighbour(edges, laid, fold) >= 0, -1)))
                .OrderByDescending(entry => entry.Fold >= 0)
                .First();
            var ways = Ways(piece, pattern.Facets[next.Facet], faces[next.Facet]);
            laid[next.Facet] = next.Fold < 0
                ? ways[0]
                : ways.MinBy(way => FoldGap(pattern.Folds[next.Fold], way, laid[Neighbour(edges, laid, next.Fold)]!));
        }

        return laid!;
    }

    private static int Neighbour(PatternEdges edges, Placement?[] laid, int fold) =>
        Array.FindIndex(Enumerable.Range(0, laid.Length).ToArray(), facet => laid[facet] is not null && edges.FoldAt[facet].Contains(fold));

    private static double FoldGap((FlatPoint From, FlatPoint To) line, Placement way, Placement other) =>
        Math.Max(way.Lift(line.From).DistanceTo(other.Lift(line.From)), way.Lift(line.To).DistanceTo(other.Lift(line.To)));

    /// <summary>All ways that fit; the best one when none does.</summary>
    private static Placement[] Ways(SewnPiece piece, IReadOnlyList<FlatPoint> ring, TrueFace face)
    {
        var all = Placement.AllOf(ring, piece.Mirrored, face).ToArray();
        var fitting = all.Where(way => way.Error <= Tolerances.OnCover + face.Bend).ToArray();
        return fitting.Length > 0 ? fitting : [all.MinBy(way => way.Error)!];
    }

    private IEnumerable<string> FacetFaults(PlacedPiece placed, int facet)
    {
        var (face, way) = (placed.Faces[facet], placed.Placements[facet]);
        if (!(way.Error <= Tolerances.OnCover + face.Bend))
        {
            yield return FormattableString.Invariant($"Piece {placed.Piece.Label} lies {way.Error:0.####} mm off the cover on {face.Label}.");
        }

        for (var edge = 0; edge < placed.Pattern.Facets[facet].Count; edge++)
        {
            if (EdgeFault(placed.Piece, placed.Edges, (face, facet), way, edge) is { } fault)
            {
                yield return fault;
            }
        }
    }

    /// <summary>Whether an edge of a facet is what the true face has there, and leads to the piece that lies beyond.</summary>
    private string? EdgeFault(SewnPiece piece, PatternEdges edges, (TrueFace Face, int Facet) target, Placement way, int edge)
    {
        var truth = target.Face.Edges[way.TrueEdgeOf[edge]];
        var run = edges.RunAt[target.Facet][edge];
        var role = run < 0 ? "fold" : piece.Runs[run].Role;
        var wanted = truth.Neighbour is null ? "hem"
            : piece.Facets.Contains(truth.Neighbour) && !(role == "seam" && order.Plan.MaySlit(target.Face.Label, truth.Neighbour)) ? "fold"
            : "seam";
        if (role != wanted)
        {
            return $"Piece {piece.Label}, edge {edge} on {target.Face.Label}, run {run} is a {role} where the cover has a {wanted} to {truth.Neighbour ?? "nothing"}.";
        }

        var beyond = role switch
        {
            "fold" => piece.Facets,
            "hem" => [],
            _ => piece.Runs[run].Partner is { } partner && pieces.TryGetValue(partner, out var other) ? other.Facets : [],
        };
        return truth.Neighbour is null || beyond.Contains(truth.Neighbour)
            ? null
            : $"Piece {piece.Label}, run {run} on {target.Face.Label} meets {truth.Neighbour}, but is joined to {piece.Runs[run].Partner} with {string.Join(", ", beyond)}.";
    }

    /// <summary>A fold belongs to two facets; both must put it at one place, unless they are parts of a skirt that stand each on its own chord.</summary>
    private IEnumerable<string> FoldFaults(PlacedPiece placed)
    {
        for (var fold = 0; fold < placed.Pattern.Folds.Count; fold++)
        {
            var line = placed.Pattern.Folds[fold];
            var ways = placed.Placements.Where((_, facet) => placed.Edges.FoldAt[facet].Contains(fold)).ToArray();
            var gap = ways.Length == 2 ? FoldGap(line, ways[0], ways[1]) : double.NaN;
            var apart = order.Sizes.Base.IsStrip && placed.Faces.Where((_, facet) => placed.Edges.FoldAt[facet].Contains(fold)).All(face => face.IsSkirt);
            var bend = placed.Faces.Where((_, facet) => placed.Edges.FoldAt[facet].Contains(fold)).Sum(face => face.Bend);
            if (!(gap <= Tolerances.OnCover + bend) && !(apart && ways.Length == 2))
            {
                yield return FormattableString.Invariant($"Piece {placed.Piece.Label}: fold {fold} does not hold its facets together, gap {gap:0.####} mm.");
            }
        }
    }

    /// <summary>The warp, the pattern's +x: of a single facet along its ring edge, else along the long side of the narrowest box.</summary>
    private IEnumerable<string> GrainFaults(PlacedPiece placed)
    {
        if (placed.Faces.Count(face => !face.IsSkirt) != 1)
        {
            foreach (var fault in LongSideFaults(placed))
            {
                yield return fault;
            }

            yield break;
        }

        var round = placed.Placements[0].AlongX.Dot(placed.Faces[0].Round);
        var sideways = placed.Placements[0].AlongX.Dot(placed.Faces[0].Outward.Cross(placed.Faces[0].Round));

        // An angle that moves a facet's corners no more than a misfit on the cover may, whatever the facet's size.
        var size = placed.Faces[0].Corners.Max(corner => corner.DistanceTo(placed.Placements[0].Middle));
        var allowed = Tolerances.OnCover / size;
        if (order.Grain != GrainRule.Free && (Math.Abs(sideways) > allowed || (order.Grain == GrainRule.OneWay && round < 0)))
        {
            yield return FormattableString.Invariant($"Piece {placed.Piece.Label}: the warp leaves the ring edge of {placed.Faces[0].Label} by {sideways:0.######} across and {round:0.######} along.");
        }
    }

    /// <summary>No direction between two corners has a narrower box; on one-way cloth up the cover is up the pattern, or toward +x on pieces that lie along the meridian.</summary>
    private IEnumerable<string> LongSideFaults(PlacedPiece placed)
    {
        var corners = placed.Pattern.SewLine;
        double Across(FlatPoint along) => corners.Max(corner => along.Cross(corner)) - corners.Min(corner => along.Cross(corner));
        var here = Across(new FlatPoint(1, 0));
        var least = corners.SelectMany((from, i) => corners.Skip(i + 1).Where(to => to.DistanceTo(from) > Tolerances.OnCover).Select(to => Across((1 / to.DistanceTo(from)) * (to - from)))).Min();
        if (!(here <= least + (4 * Tolerances.SamePlace)))
        {
            yield return FormattableString.Invariant($"Piece {placed.Piece.Label} lies {here:0.###} mm wide across the warp; {least:0.###} mm would do.");
        }

        var (up, side) = (placed.Placements[0].AlongY.Z, placed.Placements[0].AlongX.Z);
        if (order.Grain == GrainRule.OneWay && !(Math.Abs(up) > 0.11 * Math.Sqrt((up * up) + (side * side)) ? up > 0 : up > 0 || side > 0))
        {
            yield return $"Piece {placed.Piece.Label} stands upside down.";
        }
    }
}
