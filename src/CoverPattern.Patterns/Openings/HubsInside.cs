using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Openings;

/// <summary>Finds the hubs of a cover inside a region, where cloth does not lie flat.</summary>
internal static class HubsInside
{
    /// <summary>Labels of the hubs above the finished edge inside a region, sorted.</summary>
    internal static ImmutableArray<string> Of(ClippedShell surface, Region region)
    {
        if (region.Rim[0].IsRing)
        {
            return [];
        }

        var cells = FaceCutter.Cut(surface, [region]) ?? throw new ArgumentException($"The rim of {region.Label} crosses itself.", nameof(region));
        return
        [
            .. cells.Where(cell => cell.Region == 0)
                .SelectMany(cell => cell.Corners.Select(corner => surface.Shell.Faces[cell.Face].Chart.IndexOf(corner)).Where(at => at >= 0).Select(at => surface.Shell.Nodes[surface.Shell.Faces[cell.Face].Nodes[at]]))
                .Where(node => node.AboveHem > 0)
                .Select(node => node.Label).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
    }
}
