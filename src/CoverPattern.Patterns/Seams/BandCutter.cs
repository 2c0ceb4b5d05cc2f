using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts a row into parts.</summary>
internal static class BandCutter
{
    /// <summary>Cuts for a number of parts as equal as may be, positions in the row's uprights, rising.</summary>
    /// <param name="row">The row.</param>
    /// <param name="sectors">Its cuts at the sector edges.</param>
    /// <param name="parts">1 to the number of the row's facets.</param>
    /// <remarks>Where parts and sectors divide, the sector edges are kept, so that parts in different sectors are equal.</remarks>
    internal static ImmutableArray<int> Divide(BandRow row, ImmutableArray<int> sectors, int parts)
    {
        var count = row.Facets.Length;
        if (sectors.Length % parts == 0)
        {
            return [.. Enumerable.Range(0, parts).Select(i => sectors[i * sectors.Length / parts]).Order()];
        }

        if (parts % sectors.Length == 0 && count % sectors.Length == 0)
        {
            var (within, facets) = (parts / sectors.Length, count / sectors.Length);
            return [.. sectors.SelectMany(sector => Enumerable.Range(0, within).Select(i => (sector + Share(i, facets, within)) % count)).Order()];
        }

        return [.. Enumerable.Range(0, parts).Select(i => (sectors[0] + Share(i, count, parts)) % count).Order()];
    }

    /// <summary>Numbers of parts that are worth a trial, rising: those that keep the sectors, and without an inside corner those that divide the row.</summary>
    internal static IEnumerable<int> Numbers(BandRow row, int sectors, bool keepsSectors) => Enumerable.Range(1, row.Facets.Length)
        .Where(parts => parts % sectors == 0 || (!keepsSectors && (sectors % parts == 0 || row.Facets.Length % parts == 0)));

    /// <summary>The parts between cuts; the one that begins at or after the front comes first.</summary>
    internal static ImmutableArray<BandPart> Parts(StrutTable struts, BandRow row, ImmutableArray<int> cuts)
    {
        var count = row.Facets.Length;
        var parts = cuts.Select((cut, i) =>
        {
            var length = ((cuts[(i + 1) % cuts.Length] - cut + count - 1) % count) + 1;
            return new BandPart(row.Uprights[cut], [.. Enumerable.Range(1, length).Select(step => row.Facets[(cut + step) % count])]);
        });
        return [.. parts.OrderBy(part => struts.Bearing(part.Start))];
    }

    private static int Share(int i, int count, int parts) => (int)Math.Round((double)i * count / parts, MidpointRounding.AwayFromZero);
}

/// <summary>A part of a row.</summary>
/// <param name="Start">The edge along which it is cut from the part behind it.</param>
/// <param name="Facets">Counter-clockwise seen from above.</param>
internal sealed record BandPart(int Start, ImmutableArray<int> Facets);
