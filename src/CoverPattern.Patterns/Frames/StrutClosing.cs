using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Finds struts that close no facet.</summary>
public static class StrutClosing
{
    /// <summary>What is wrong with the struts before anything is solved.</summary>
    /// <param name="wish">With struts of a family that has been recognised.</param>
    /// <returns>Names of odd struts that the frame has not, beside the name of one that it has; facets whose struts cannot meet, each with its struts, the longest last.</returns>
    public static ((ImmutableArray<string> Names, string Such) Strays, ImmutableArray<(string Facet, ImmutableArray<StrutLength> Sides)> Open) Find(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(wish.Struts);
        var nominal = StrutFamily.Nominal(wish);
        var names = nominal.Struts.Select(strut => StrutFamily.Name(nominal, strut)).ToHashSet(StringComparer.Ordinal);
        return (
            ([.. wish.Struts.Odd.Select(odd => odd.Name).Where(name => !names.Contains(name))], StrutFamily.Name(nominal, nominal.Struts[0])),
            [.. Open(nominal, StrutFamily.Lengths(nominal, wish.Struts)).Select(facet => (facet.Facet, facet.Sides.Select(side => new StrutLength(side.Name, new Measure(side.LengthMm, ""))).ToImmutableArray()))]);
    }

    /// <summary>Facets whose longest strut is not shorter than the others together, each with its struts, the longest last.</summary>
    internal static IEnumerable<(string Facet, (string Name, double LengthMm)[] Sides)> Open(Frame nominal, ImmutableArray<double> lengths)
    {
        var byHubs = nominal.Struts.Select((strut, i) => (strut, i)).ToDictionary(pair => (pair.strut.From, pair.strut.To), pair => (Name: StrutFamily.Name(nominal, pair.strut), LengthMm: lengths[pair.i]));
        return nominal.Facets
            .Select(facet => (facet.Label, Sides: facet.Hubs
                .Select((hub, i) => (hub, Next: facet.Hubs[(i + 1) % facet.Hubs.Length]))
                .Select(pair => byHubs[(Math.Min(pair.hub, pair.Next), Math.Max(pair.hub, pair.Next))])
                .OrderBy(side => side.LengthMm).ThenBy(side => side.Name, StringComparer.Ordinal).ToArray()))
            .Where(facet => !(facet.Sides[..^1].Sum(side => side.LengthMm) > facet.Sides[^1].LengthMm));
    }
}
