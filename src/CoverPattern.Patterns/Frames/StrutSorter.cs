using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>Finds the struts round the facets and sorts them into classes of equal length.</summary>
internal static class StrutSorter
{
    // One part in 10^9 of the frame: a hundred times the rounding of double arithmetic, and 25,000 times
    // below the smallest gap between two classes of an 8V frame (2.5e-5 R, own calculation).
    private const double SameLength = 1e-9;

    /// <param name="hubs">Hubs.</param>
    /// <param name="facets">Facets between them.</param>
    /// <param name="folds">Edges that are no struts.</param>
    /// <param name="classesMm">Lengths that differ by no more than this may be one class; 0 where lengths are exact. No strut's own length changes.</param>
    internal static (ImmutableArray<Strut> Struts, ImmutableArray<StrutClass> Classes) Sort(
        ImmutableArray<Hub> hubs, ImmutableArray<Facet> facets, ImmutableArray<(int From, int To)> folds, double classesMm)
    {
        var bars = Bars(facets).Except(folds).Select(bar => (bar.From, bar.To, Length: Point3.Distance(hubs[bar.From].Position, hubs[bar.To].Position))).ToArray();
        var scale = bars.Max(bar => bar.Length);
        var lengths = new List<double>();
        foreach (var length in bars.Select(bar => bar.Length).Order())
        {
            if (lengths.Count == 0 || length - lengths[^1] > Math.Max(classesMm, SameLength * scale))
            {
                lengths.Add(length);
            }
        }

        int ClassOf(double length) => lengths.BinarySearch(length) is var at && at >= 0 ? at : ~at - 1;
        var members = bars.ToLookup(bar => ClassOf(bar.Length), bar => bar.Length);
        return (
            [.. bars.Select(bar => new Strut(bar.From, bar.To, Letter(ClassOf(bar.Length)), bar.Length))],
            [.. lengths.Select((length, i) => Class(i, length, [.. members[i]], scale))]);
    }

    private static StrutClass Class(int index, double shortest, double[] members, double scale) => members.Max() - shortest > SameLength * scale
        ? new StrutClass(Letter(index), members.Average(), members.Length) { ShortestMm = shortest, LongestMm = members.Max() }
        : new StrutClass(Letter(index), shortest, members.Length);

    private static IEnumerable<(int From, int To)> Bars(ImmutableArray<Facet> facets) => facets
        .SelectMany(facet => facet.Hubs.Select((hub, i) => (hub, Next: facet.Hubs[(i + 1) % facet.Hubs.Length])))
        .Select(pair => (Math.Min(pair.hub, pair.Next), Math.Max(pair.hub, pair.Next)))
        .Distinct()
        .Order();

    /// <summary>A to Z, then AA, AB and so on.</summary>
    private static string Letter(int index)
    {
        var last = ((char)('A' + (index % 26))).ToString(CultureInfo.InvariantCulture);
        return index < 26 ? last : Letter((index / 26) - 1) + last;
    }
}
