using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Finds the corners of rims at which the cloth that is turned under must be clipped.</summary>
internal static class RimCorner
{
    // Steps of a curve bend by 15 degrees at most, by the number of corners of the smallest circles; what bends more is a corner.
    private const double LeastBend = 20;

    /// <summary>The inside corners along rims, those of the outline and of holes, each with the cut line beyond it.</summary>
    /// <param name="pattern">A pattern; round holes have no corners.</param>
    internal static IEnumerable<(InsideCorner Corner, ImmutableArray<Point2> CutLine)> Find(Pattern pattern)
    {
        // A sheet is not turned under.
        if (pattern.Kind is PieceKind.Pane or PieceKind.Screen)
        {
            yield break;
        }

        foreach (var run in pattern.Runs.Where(run => run is { Role: EdgeRole.Rim, AllowanceMm: > 0 }))
        {
            var count = pattern.SewLine.Length;
            var steps = (run.To - run.From + count) % count;
            foreach (var corner in Enumerable.Range(1, Math.Max(0, steps - 1)).SelectMany(step => At(pattern.SewLine, (run.From + step) % count)))
            {
                yield return (corner, pattern.CutLine);
            }
        }

        foreach (var cutout in pattern.Cutouts.Where(cutout => cutout.Run.AllowanceMm > 0))
        {
            foreach (var corner in Enumerable.Range(0, cutout.Rim.Length).SelectMany(corner => At(cutout.Rim, corner)))
            {
                yield return (corner, cutout.CutLine);
            }
        }
    }

    private static IEnumerable<InsideCorner> At(ImmutableArray<Point2> ring, int at)
    {
        var corner = InsideCorner.Bend(-1, ring[(at + ring.Length - 1) % ring.Length], ring[at], ring[(at + 1) % ring.Length]);
        return corner.InsideDegrees > 180 + LeastBend ? [corner] : [];
    }
}
