using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Seams;

/// <summary>Finds where a row is cut at the sector edges, once in each turn of the frame.</summary>
internal static class SectorCuts
{
    /// <summary>An upper hub with a larger corner than this (degrees) is an inside corner that asks for a cut.</summary>
    internal const double InsideCorner = 185;

    // Angles nearer than this count as equal, degrees.
    private const double SameAngle = 1e-6;

    // Bearings nearer than this count as equal, radians.
    private const double SameBearing = 1e-9;

    /// <summary>Largest angle of the row at a hub of its upper ring, degrees.</summary>
    internal static double LargestCorner(StrutTable struts, BandRow row) => row.Uprights.Max(upright => Corner(struts, row, struts.UpperHub(upright)));

    /// <summary>The cuts of every row, each going on from the row above where its corners leave it free: for each row its cut edges.</summary>
    internal static ImmutableDictionary<int, (BandRow Row, ImmutableArray<int> Cuts)> All(StrutTable struts)
    {
        var all = ImmutableDictionary.CreateBuilder<int, (BandRow, ImmutableArray<int>)>();
        (BandRow Row, ImmutableArray<int> Cuts)? above = null;
        foreach (var row in struts.RowsFromTop.Select(struts.Row).OfType<BandRow>())
        {
            var cuts = Find(struts, row, above, mustContinue: false);
            all.Add(row.Number, (row, cuts));
            above = (row, cuts);
        }

        return all.ToImmutable();
    }

    /// <summary>Positions in the row's uprights, rising.</summary>
    /// <param name="struts">The frame's struts and turns.</param>
    /// <param name="row">The row to be cut.</param>
    /// <param name="above">The row above it and its cuts; null at the top.</param>
    /// <param name="mustContinue">Whether the cuts have to begin where those of the row above end.</param>
    /// <remarks>
    /// The cut stands where the row, as the lower of two, has its largest inside corner, on the upright that halves the corner;
    /// where there is none it goes on from the row above. Where that leaves a choice it keeps near the meridians of the sectors
    /// (the front, and where the turns bring it), then halves the corner best; what is still equal is decided by the bearing.
    /// </remarks>
    internal static ImmutableArray<int> Find(StrutTable struts, BandRow row, (BandRow Row, ImmutableArray<int> Cuts)? above, bool mustContinue)
    {
        var ends = above is null ? [] : above.Value.Cuts.Select(cut => struts.LowerHub(above.Value.Row.Uprights[cut])).ToHashSet();
        var chosen = row.Uprights
            .Select(upright => Judge(struts, row, ends, upright))
            .OrderBy(judged => mustContinue && !judged.Continues)
            .ThenByDescending(judged => judged.Corner)
            .ThenBy(judged => !judged.Continues)
            .ThenBy(judged => judged.Drift)
            .ThenBy(judged => judged.Unevenness)
            .ThenBy(judged => judged.Bearing)
            .First().Upright;
        return [.. struts.Orbit(chosen).Select(edge => row.Uprights.IndexOf(edge)).Order()];
    }

    private static (int Upright, double Corner, bool Continues, double Drift, double Unevenness, double Bearing) Judge(
        StrutTable struts, BandRow row, HashSet<int> ends, int upright)
    {
        var hub = struts.UpperHub(upright);
        var corner = Corner(struts, row, hub);
        var (ahead, behind) = Sides(struts, row, upright, hub);
        return (
            upright,
            corner > InsideCorner ? Math.Round(corner / SameAngle) : 0,
            ends.Contains(hub),
            Math.Round(Drift(struts, struts.LowerHub(upright)) / SameBearing),
            Math.Round(Math.Abs(ahead - behind) * 180 / Math.PI / SameAngle),
            Math.Round(struts.Bearing(upright) / SameBearing));
    }

    /// <summary>Angle between a hub and the nearest sector meridian, seen from above, radians; the front is one of them.</summary>
    private static double Drift(StrutTable struts, int hub)
    {
        var at = struts.Frame.Hubs[hub].Position;
        var sector = 2 * Math.PI / struts.Turns.Length;
        var bearing = Math.Atan2(at.Y, at.X) / sector;
        return Math.Abs(bearing - Math.Round(bearing)) * sector;
    }

    private static double Corner(StrutTable struts, BandRow row, int hub) => row.Facets.Sum(facet => struts.AngleAt(facet, hub)) * 180 / Math.PI;

    /// <summary>The row's angles at a hub ahead of an upright (counter-clockwise) and behind it, radians.</summary>
    private static (double Ahead, double Behind) Sides(StrutTable struts, BandRow row, int upright, int hub)
    {
        var (count, at) = (row.Facets.Length, row.Uprights.IndexOf(upright));
        IEnumerable<double> Going(int step, int start) => Enumerable.Range(0, count / 2)
            .Select(i => struts.AngleAt(row.Facets[(((start + (step * i)) % count) + count) % count], hub)).TakeWhile(angle => angle > 0);
        return (Going(1, at + 1).Sum(), Going(-1, at).Sum());
    }
}
