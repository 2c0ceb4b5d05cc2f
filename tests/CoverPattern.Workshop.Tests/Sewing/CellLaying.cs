using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Finds where the facets of a piece lie on what openings leave of the true faces.</summary>
/// <param name="cells">Cells of each face.</param>
/// <param name="patterns">Patterns by their id.</param>
/// <param name="pieces">Pieces by their label.</param>
/// <param name="onCover">How near a corner has to come to the true one, millimetres.</param>
internal sealed class CellLaying(
    IReadOnlyDictionary<string, List<TrueCell>> cells, IReadOnlyDictionary<string, SewnPattern> patterns, IReadOnlyDictionary<string, SewnPiece> pieces, double onCover)
{
    /// <summary>Every facet of a piece on one of the cells left of its face, and how far their common corners lie apart in all; null where there is no way.</summary>
    internal (LaidFacet[]? Best, double Apart) BestOf(SewnPiece piece)
    {
        var pattern = patterns[piece.Pattern];
        LaidFacet[]? best = null;
        var found = double.PositiveInfinity;
        foreach (var first in Ways(piece, pattern, 0))
        {
            var all = new List<LaidFacet> { first };
            for (var facet = 1; facet < pattern.Facets.Count; facet++)
            {
                if (Ways(piece, pattern, facet).OrderBy(way => Apart(all, way)).FirstOrDefault() is { } way)
                {
                    all.Add(way);
                }
            }

            var cost = Enumerable.Range(1, all.Count - 1).Sum(i => Apart(all[..i], all[i]));
            if (all.Count == pattern.Facets.Count && cost < found)
            {
                (best, found) = ([.. all], cost);
            }
        }

        return (best, found);
    }

    /// <summary>How far a point is off the way from one to another.</summary>
    internal static double Off(SpacePoint from, SpacePoint to, SpacePoint point) => from.DistanceTo(point) + to.DistanceTo(point) - from.DistanceTo(to);

    private LaidFacet[] Ways(SewnPiece piece, SewnPattern pattern, int facet)
    {
        FlatPoint[] keys = [.. pattern.Facets[facet].Where(corner => IsKey(pattern, corner))];
        var ways = (cells.GetValueOrDefault(piece.Facets[facet]) ?? []).Where(cell => cell.Face.Corners.Count == keys.Length)
            .SelectMany(cell => Placement.AllOf(keys, piece.Mirrored, cell.Face).Select(way => new LaidFacet(piece, pattern, facet, keys, cell, way))).ToArray();
        var least = ways.Select(way => way.Way.Error).DefaultIfEmpty(0).Min();
        LaidFacet[] near = [.. ways.Where(way => way.Way.Error <= Math.Max(onCover, least))];

        // A round hole in the middle leaves corners of a face that are alike: the pieces beside them tell which is whose.
        LaidFacet[] beside = [.. near.Where(LiesBesidePartners)];
        return beside.Length > 0 ? beside : near;
    }

    /// <summary>Whether every seam of a facet lies on an edge of its face beyond which there is a face of the partner.</summary>
    private bool LiesBesidePartners(LaidFacet way) => Enumerable.Range(0, way.Pattern.Runs.Count)
        .Where(i => way.Pattern.Runs[i].Role == "seam" && way.Piece.Runs[i].Partner is not null)
        .Select(i => (Path: way.Pattern.PathOf(i), Partner: pieces.GetValueOrDefault(way.Piece.Runs[i].Partner!)))
        .Where(seam => seam.Partner is { Facets.Count: > 0 } && new[] { seam.Path[0], seam.Path[^1] }.All(end => way.Keys.Any(key => key.DistanceTo(end) <= Tolerances.SamePlace)))
        .All(seam => seam.Partner!.Facets.Contains(NeighbourAt(way.Cell.Whole, way.Way.Lift(0.5 * (seam.Path[0] + seam.Path[^1])))));

    private static string? NeighbourAt(TrueFace face, SpacePoint point) =>
        face.Edges[Enumerable.Range(0, face.Corners.Count).MinBy(i => Off(face.Corners[i], face.Corners[(i + 1) % face.Corners.Count], point))].Neighbour;

    /// <summary>Whether a corner of a facet is an end of an edge or fold; points along a rim are not, nor where its sides meet.</summary>
    private static bool IsKey(SewnPattern pattern, FlatPoint corner) =>
        pattern.Runs.Where((run, i) => run.Role != "rim" || pattern.Runs[(i + pattern.Runs.Count - 1) % pattern.Runs.Count].Role != "rim").Any(run => pattern.SewLine[run.From].DistanceTo(corner) <= Tolerances.SamePlace)
        || pattern.Folds.Any(fold => Math.Min(fold.From.DistanceTo(corner), fold.To.DistanceTo(corner)) <= Tolerances.SamePlace);

    /// <summary>How far common corners of facets lie apart in space.</summary>
    private static double Apart(List<LaidFacet> laid, LaidFacet facet) => facet.Keys.Max(corner => laid
        .Where(other => other.Keys.Any(key => key.DistanceTo(corner) <= Tolerances.SamePlace))
        .Select(other => other.Way.Lift(corner).DistanceTo(facet.Way.Lift(corner))).DefaultIfEmpty(0).Max());
}

/// <summary>A facet of a piece on its cell.</summary>
internal sealed record LaidFacet(SewnPiece Piece, SewnPattern Pattern, int Facet, FlatPoint[] Keys, TrueCell Cell, Placement Way);
