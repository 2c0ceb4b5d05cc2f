using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Tells why facets cannot be one panel, and what to do.</summary>
internal static class PanelFaults
{
    // More labels than this are not listed one by one.
    private const int MostListed = 12;

    // A hub whose angles miss a full turn by less than this lies flat, radians: 0.001 mm at a metre.
    private const double Flat = 1e-6;

    /// <summary>The faults of a panel with its slits; none when it can be laid flat exactly.</summary>
    internal static IEnumerable<Fault> Of(StrutTable struts, string place, string said, IReadOnlyCollection<int> facets, IReadOnlySet<int> slits)
    {
        var flat = FlatPanel.Lay(struts.Shell, facets, slits);
        if (!flat.IsWhole)
        {
            yield return new Fault(place, said, "Facets that hang together over struts that are not slit; these fall apart. Make them two groups, or name fewer slits.");
        }
        else if (!flat.Closes)
        {
            var hubs = Surrounded(struts, facets, slits);
            yield return new Fault(place, said, hubs.Length > 0
                ? FormattableString.Invariant($"Cloth cannot lie flat round a hub: {Listed(hubs.Select(hub => struts.Frame.Hubs[hub].Label))} would be surrounded. Name in \"slits\" a strut from each of them that leads, alone or by others, to the edge of the panel, or leave facets out.")
                : "The facets close a ring, which cannot be cut from one flat piece. Name in \"slits\" a strut across it, or leave facets out.");
        }
        else if (flat.Reach > FacetReach.MostMm)
        {
            yield return new Fault(place, said, FormattableString.Invariant($"Panels of at most {FacetReach.MostMm / 1000:0} m; laid flat this one is {flat.Reach / 1000:0.0} m long. Make more parts of it."));
        }
        else if (!flat.IsExact)
        {
            yield return new Fault(place, said, "Laid flat the panel would lie over itself. Name other slits, or make two panels of it.");
        }
    }

    /// <summary>Labels in a row, shortened when they are many.</summary>
    internal static string Listed(IEnumerable<string> labels)
    {
        var all = labels.Order(StringComparer.Ordinal).ToArray();
        return string.Join(", ", all.Take(MostListed)) + (all.Length > MostListed ? FormattableString.Invariant($", ... ({all.Length} in all)") : string.Empty);
    }

    /// <summary>Hubs all round which facets of the panel are joined over folds.</summary>
    internal static ImmutableArray<int> Surrounded(StrutTable struts, IReadOnlyCollection<int> facets, IReadOnlySet<int> slits)
    {
        var own = facets.ToHashSet();
        var border = struts.Shell.Edges.Select((edge, i) => (edge, i))
            .Where(pair => slits.Contains(pair.i) || !own.Contains(pair.edge.Left) || !own.Contains(pair.edge.Right))
            .SelectMany(pair => new[] { pair.edge.From, pair.edge.To })
            .ToHashSet();
        return [.. InnerHubs(struts, own).Where(hub => !border.Contains(hub) && Math.Abs(own.Sum(facet => struts.AngleAt(facet, hub)) - (2 * Math.PI)) > Flat)];
    }

    /// <summary>Hubs at which every edge lies between two facets of a set.</summary>
    internal static IEnumerable<int> InnerHubs(StrutTable struts, IReadOnlySet<int> facets)
    {
        var outer = struts.Shell.Edges
            .Where(edge => edge.Right < 0 || !facets.Contains(edge.Left) || !facets.Contains(edge.Right))
            .SelectMany(edge => new[] { edge.From, edge.To })
            .ToHashSet();
        return Enumerable.Range(0, struts.Frame.Hubs.Length).Where(hub => !outer.Contains(hub));
    }
}
