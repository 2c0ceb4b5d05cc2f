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
        return new PlacedPiece(piece, pattern, edges, faces, [.. faces.Select((face, facet) => Lay(piece, edges, pattern.Facets[facet], (face, facet)))]);
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

    private Placement Lay(SewnPiece piece, PatternEdges edges, IReadOnlyList<FlatPoint> ring, (TrueFace Face, int Facet) target)
    {
        var all = Placement.AllOf(ring, piece.Mirrored, target.Face).ToArray();
        var fitting = all.Where(way => way.Error <= Tolerances.OnCover).ToArray();
        return fitting.Length == 0
            ? all.MinBy(way => way.Error)!
            : fitting.MinBy(way => Enumerable.Range(0, ring.Count).Count(edge => EdgeFault(piece, edges, target, way, edge) is not null))!;
    }

    private IEnumerable<string> FacetFaults(PlacedPiece placed, int facet)
    {
        var (face, way) = (placed.Faces[facet], placed.Placements[facet]);
        if (!(way.Error <= Tolerances.OnCover))
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
        if (role != truth.Role)
        {
            return $"Piece {piece.Label}, edge {edge} on {target.Face.Label}, run {run} is a {role} where the cover has a {truth.Role} to {truth.Neighbour ?? "nothing"}.";
        }

        var beyond = role switch
        {
            "fold" => piece.Facets,
            "hem" => [],
            _ => piece.Runs[run].Partner is { } partner ? pieces[partner].Facets : [],
        };
        return truth.Neighbour is null || beyond.Contains(truth.Neighbour)
            ? null
            : $"Piece {piece.Label}, run {run} on {target.Face.Label} meets {truth.Neighbour}, but is joined to {piece.Runs[run].Partner} with {string.Join(", ", beyond)}.";
    }

    /// <summary>A fold belongs to two facets; both must put it at one place.</summary>
    private static IEnumerable<string> FoldFaults(PlacedPiece placed)
    {
        for (var fold = 0; fold < placed.Pattern.Folds.Count; fold++)
        {
            var line = placed.Pattern.Folds[fold];
            var ways = placed.Placements.Where((_, facet) => placed.Edges.FoldAt[facet].Contains(fold)).ToArray();
            var gap = ways.Length == 2
                ? Math.Max(ways[0].Lift(line.From).DistanceTo(ways[1].Lift(line.From)), ways[0].Lift(line.To).DistanceTo(ways[1].Lift(line.To)))
                : double.NaN;
            if (!(gap <= Tolerances.OnCover))
            {
                yield return FormattableString.Invariant($"Piece {placed.Piece.Label}: fold {fold} does not hold its facets together, gap {gap:0.####} mm.");
            }
        }
    }

    /// <summary>The warp, the pattern's +x, runs along the ring edge of the piece's main facet.</summary>
    private IEnumerable<string> GrainFaults(PlacedPiece placed)
    {
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
}
