using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Seams;

/// <summary>Chooses the struts along which a panel is slit so that it lies flat.</summary>
/// <remarks>
/// Every inner hub must be joined to the border by slits, once: a forest. The shortest is the least spanning tree with the
/// border taken as one hub [Kruskal 1956, from memory]. When the panel then lies over itself, it is slit along the rings from both
/// sides, which leaves a spine from top to base; then single slits are exchanged, the shortest forests being tried first.
/// </remarks>
internal static class SlitFinder
{
    // Forests tried before it is given up.
    private const int MostTrials = 100;

    // Lengths are compared in steps of this, millimetres, so that rounding decides nothing.
    private const double LengthStep = 0.001;

    /// <summary>The slits, rising; null when no forest tried lies flat.</summary>
    /// <param name="struts">The frame's struts.</param>
    /// <param name="facets">Facets of the panel, the main one first.</param>
    internal static ImmutableArray<int>? Find(StrutTable struts, IReadOnlyList<int> facets)
    {
        var own = facets.ToHashSet();
        var inner = PanelFaults.InnerHubs(struts, own).ToHashSet();
        int[] edges = [.. Enumerable.Range(0, struts.Shell.Edges.Length)
            .Where(edge => own.Contains(struts.Shell.Edges[edge].Left) && own.Contains(struts.Shell.Edges[edge].Right))
            .OrderBy(edge => Steps(struts, edge)).ThenBy(edge => edge)];
        var first = Forest(struts, inner, edges);
        foreach (var forest in new[] { first, Forest(struts, inner, FromTheBorder(struts, own, edges)) })
        {
            if (FlatPanel.Lay(struts.Shell, facets, forest.ToHashSet()).IsExact)
            {
                return [.. forest.Order()];
            }
        }

        var waiting = new SortedSet<(long Length, string Key)> { (first.Sum(edge => Steps(struts, edge)), Key(first)) };
        var seen = new HashSet<string>(StringComparer.Ordinal) { Key(first) };
        for (var trial = 0; trial < MostTrials && waiting.Count > 0; trial++)
        {
            var forest = waiting.Min;
            waiting.Remove(forest);
            int[] slits = [.. forest.Key.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(int.Parse)];
            if (FlatPanel.Lay(struts.Shell, facets, slits.ToHashSet()).IsExact)
            {
                return [.. slits.Order()];
            }

            foreach (var other in Exchanged(struts, inner, edges, slits).Where(other => seen.Add(Key(other))))
            {
                waiting.Add((other.Sum(edge => Steps(struts, edge)), Key(other)));
            }
        }

        return null;
    }

    /// <summary>Edges along the rings first, those farthest from the middle of their ring's part before the others.</summary>
    private static IEnumerable<int> FromTheBorder(StrutTable struts, HashSet<int> own, int[] edges)
    {
        Point3 Middle(int edge) => Point3.Between(Hub(struts.Shell.Edges[edge].From), Hub(struts.Shell.Edges[edge].To), 0.5);
        Point3 Hub(int hub) => struts.Frame.Hubs[hub].Position;
        int Ring(int edge) => struts.Frame.Hubs[struts.Shell.Edges[edge].From].Ring;
        bool IsAlongRing(int edge) => Ring(edge) == struts.Frame.Hubs[struts.Shell.Edges[edge].To].Ring;
        var middles = own.SelectMany(facet => struts.Frame.Facets[facet].Hubs).Distinct().GroupBy(hub => struts.Frame.Hubs[hub].Ring)
            .ToDictionary(ring => ring.Key, ring => (1.0 / ring.Count()) * ring.Aggregate(default(Point3), (sum, hub) => sum + Hub(hub)));
        return edges.OrderBy(edge => !IsAlongRing(edge))
            .ThenByDescending(edge => IsAlongRing(edge) ? Math.Round(Point3.Distance(Middle(edge), middles[Ring(edge)]) / LengthStep) : 0)
            .ThenBy(edge => Steps(struts, edge))
            .ThenBy(edge => edge);
    }

    /// <summary>All forests that differ in one slit.</summary>
    private static IEnumerable<int[]> Exchanged(StrutTable struts, HashSet<int> inner, int[] edges, int[] slits)
    {
        foreach (var gone in slits)
        {
            int[] kept = [.. slits.Where(edge => edge != gone)];
            foreach (var added in edges.Where(edge => !slits.Contains(edge)))
            {
                int[] other = [.. kept, added];
                if (Forest(struts, inner, other).Length == slits.Length)
                {
                    yield return [.. other.Order()];
                }
            }
        }
    }

    /// <summary>The edges, in the order given, that join hubs which were not joined before; the border is one hub.</summary>
    private static int[] Forest(StrutTable struts, HashSet<int> inner, IEnumerable<int> edges)
    {
        const int border = -1;
        var leader = new Dictionary<int, int>();
        int Find(int hub)
        {
            while (leader.TryGetValue(hub, out var next))
            {
                hub = next;
            }

            return hub;
        }

        var forest = new List<int>();
        foreach (var edge in edges)
        {
            int Root(int hub) => Find(inner.Contains(hub) ? hub : border);
            var (from, to) = (Root(struts.Shell.Edges[edge].From), Root(struts.Shell.Edges[edge].To));
            if (from != to)
            {
                leader[from] = to;
                forest.Add(edge);
            }
        }

        return [.. forest];
    }

    private static long Steps(StrutTable struts, int edge) => (long)Math.Round(struts.Shell.Edges[edge].LengthMm / LengthStep);

    private static string Key(IEnumerable<int> slits) => string.Join(',', slits.Order());
}
