using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Seams;

/// <summary>Which facets each wish for panels takes; every facet must be taken once.</summary>
internal sealed class PanelClaims
{
    private readonly StrutTable struts;
    private readonly ImmutableArray<PanelWish> wishes;
    private readonly Dictionary<int, int> wishOfFacet = [];
    private readonly List<Fault> faults = [];
    private readonly ImmutableArray<int>[] facets;

    private PanelClaims(StrutTable struts, ImmutableArray<PanelWish> wishes)
    {
        (this.struts, this.wishes) = (struts, wishes);
        facets = [.. wishes.Select(_ => ImmutableArray<int>.Empty)];
    }

    internal ImmutableArray<Fault> Faults => [.. faults];

    private int Rows => struts.Frame.Facets.Max(facet => facet.Row);

    /// <summary>Sorts the facets: named ones first, then rows, then what is left.</summary>
    internal static PanelClaims Of(StrutTable struts, ImmutableArray<PanelWish> wishes)
    {
        var claims = new PanelClaims(struts, wishes);
        for (var pass = 0; pass < 3; pass++)
        {
            foreach (var wish in Enumerable.Range(0, wishes.Length).Where(wish => claims.PassOf(wish) == pass))
            {
                claims.Claim(wish);
            }
        }

        claims.RefuseLeftOut();
        return claims;
    }

    /// <summary>The facets of a wish: named ones as listed, rows from the top down.</summary>
    internal ImmutableArray<int> FacetsOf(int wish) => facets[wish];

    /// <summary>The rows of a wish, the highest first.</summary>
    internal ImmutableArray<int> RowsOf(int wish) => [.. facets[wish].Select(facet => struts.Frame.Facets[facet].Row).Distinct().OrderDescending()];

    private static string Place(int wish, string key) => FormattableString.Invariant($"panels[{wish}].{key}");

    private int PassOf(int wish) => !wishes[wish].Facets.IsEmpty ? 0 : wishes[wish].Rows is not null ? 1 : 2;

    private void Claim(int wish)
    {
        facets[wish] = PassOf(wish) switch
        {
            0 => Named(wish),
            1 => InRows(wish),
            _ => Left(wish),
        };
        var taken = facets[wish].Where(wishOfFacet.ContainsKey).ToArray();
        foreach (var other in taken.GroupBy(facet => wishOfFacet[facet]))
        {
            faults.Add(new Fault(
                Place(wish, PassOf(wish) == 0 ? "facets" : "rows"),
                PanelFaults.Listed(other.Select(facet => struts.Frame.Facets[facet].Label)),
                other.Key == wish ? "each facet once" : FormattableString.Invariant($"each facet in one entry; these are taken by panels[{other.Key}] too. Leave them out here or there.")));
        }

        foreach (var facet in facets[wish])
        {
            wishOfFacet[facet] = wish;
        }
    }

    private ImmutableArray<int> Named(int wish)
    {
        var wanted = wishes[wish].Facets;
        var unknown = wanted.Where(label => struts.FacetNamed(label) < 0).ToArray();
        if (unknown.Length > 0)
        {
            faults.Add(new Fault(
                Place(wish, "facets"),
                PanelFaults.Listed(unknown),
                $"labels of this frame's facets, \"{struts.Frame.Facets[0].Label}\" to \"{struts.Frame.Facets[^1].Label}\": row, counted from the deck up, and position"));
        }

        var twice = wanted.GroupBy(label => label, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key).ToArray();
        if (twice.Length > 0)
        {
            faults.Add(new Fault(Place(wish, "facets"), PanelFaults.Listed(twice), "each facet once"));
        }

        return [.. wanted.Select(struts.FacetNamed).Where(facet => facet >= 0).Distinct()];
    }

    private ImmutableArray<int> InRows(int wish)
    {
        var range = wishes[wish].Rows!;
        if (range.First < 1 || range.Last > Rows || range.First > range.Last)
        {
            faults.Add(new Fault(Place(wish, "rows"), range.ToString(), FormattableString.Invariant($"rows 1 (at the deck) to {Rows} (at the top), the lower one first")));
        }

        return FacetsIn(row => row >= range.First && row <= range.Last);
    }

    /// <summary>What no other wish takes: of bands and gores only whole rows.</summary>
    private ImmutableArray<int> Left(int wish)
    {
        var taken = wishOfFacet.Keys.Select(facet => struts.Frame.Facets[facet].Row).ToHashSet();
        var left = wishes[wish].Form == PanelForm.Facets
            ? FacetsIn(_ => true).RemoveAll(wishOfFacet.ContainsKey)
            : FacetsIn(row => !taken.Contains(row));
        if (left.IsEmpty)
        {
            faults.Add(new Fault(Place(wish, "rows"), "\"rest\"", "nothing is left for this entry: the others take every " + (wishes[wish].Form == PanelForm.Facets ? "facet" : "row or a part of it") + ". Leave it out, or name fewer rows there."));
        }

        return left;
    }

    private ImmutableArray<int> FacetsIn(Func<int, bool> isRow) =>
        [.. Enumerable.Range(0, struts.Frame.Facets.Length).Where(facet => isRow(struts.Frame.Facets[facet].Row)).OrderByDescending(facet => struts.Frame.Facets[facet].Row)];

    private void RefuseLeftOut()
    {
        var left = Enumerable.Range(0, struts.Frame.Facets.Length).Where(facet => !wishOfFacet.ContainsKey(facet)).Select(facet => struts.Frame.Facets[facet].Label).ToArray();
        if (left.Length > 0)
        {
            faults.Add(new Fault(
                "panels",
                FormattableString.Invariant($"{left.Length} facets are in no entry: {PanelFaults.Listed(left)}"),
                "every facet in one entry; add { \"as\": \"facets\", \"rows\": \"rest\" }, or name these"));
        }
    }
}
