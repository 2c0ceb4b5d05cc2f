using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Seams;

/// <summary>Takes regions out of patches.</summary>
internal static class RegionCutter
{
    /// <summary>Gives each region's patch its hole, and each hole its rim.</summary>
    /// <param name="patches">The patches without holes.</param>
    /// <param name="regions">The regions; each lies wholly inside one patch.</param>
    /// <param name="firstArc">Index that the first rim gets.</param>
    internal static (ImmutableArray<Patch> Patches, ImmutableArray<Arc> Rims) Cut(ImmutableArray<Patch> patches, ImmutableArray<Region> regions, int firstArc)
    {
        var cut = patches.ToBuilder();
        var rims = ImmutableArray.CreateBuilder<Arc>(regions.Length);
        foreach (var region in regions)
        {
            var at = Enumerable.Range(0, cut.Count).Where(i => cut[i].Face == region.Centre.Face).DefaultIfEmpty(-1).First();
            if (at < 0)
            {
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Region {region.Label} lies in face {region.Centre.Face}, of which nothing is left."), nameof(regions));
            }

            var side = new PatchSide(at, cut[at].Corners.Length + cut[at].Holes.Length);
            cut[at] = cut[at] with { Holes = cut[at].Holes.Add(new PatchHole(firstArc + rims.Count, region)) };
            rims.Add(new Arc(region.Label, EdgeRole.Rim, null, 2 * Math.PI * region.Radius, side, Second: null));
        }

        return (cut.ToImmutable(), rims.ToImmutable());
    }
}
