using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Turns facets one way round and finds out whether they make one sheet with a border.</summary>
internal static class SurveyTopology
{
    /// <summary>The facets, neighbours running the same way round, in the order of the survey.</summary>
    internal static ImmutableArray<SurveyFacet> Order(FrameSurvey survey, SurveyFaults faults)
    {
        var sides = Sides(survey);
        foreach (var (edge, list) in sides.Where(pair => pair.Value.Count > 2).OrderBy(pair => pair.Value[0].Facet).ThenBy(pair => pair.Key))
        {
            faults.Add(
                FormattableString.Invariant($"{survey.Facets[list[2].Facet].Place}: the edge {Edge(survey, edge)} belongs to {list.Count} facets"),
                "two facets on an edge at most: one sheet; leave out inner walls and doubled faces");
        }

        var isTurned = faults.IsEmpty ? Turns(survey, sides, faults) : [];
        if (!faults.IsEmpty)
        {
            return survey.Facets;
        }

        ImmutableArray<SurveyFacet> facets = [.. survey.Facets.Select((facet, i) => isTurned[i]!.Value ? facet with { Hubs = [.. facet.Hubs.Reverse()] } : facet)];
        CheckBorders(survey, facets, sides, faults);
        return facets;
    }

    private static Dictionary<(int, int), List<(int Facet, bool IsForward)>> Sides(FrameSurvey survey)
    {
        var sides = new Dictionary<(int, int), List<(int, bool)>>();
        foreach (var (facet, i) in survey.Facets.Select((facet, i) => (facet, i)))
        {
            for (var at = 0; at < facet.Hubs.Length; at++)
            {
                var (from, to) = (facet.Hubs[at], facet.Hubs[(at + 1) % facet.Hubs.Length]);
                var key = (Math.Min(from, to), Math.Max(from, to));
                (sides.TryGetValue(key, out var list) ? list : sides[key] = []).Add((i, from < to));
            }
        }

        return sides;
    }

    /// <summary>Which facets must be turned to run as the first does.</summary>
    private static bool?[] Turns(FrameSurvey survey, Dictionary<(int, int), List<(int Facet, bool IsForward)>> sides, SurveyFaults faults)
    {
        var across = survey.Facets.Select(_ => new List<(int Facet, bool IsAgainst, (int, int) Edge)>()).ToArray();
        foreach (var (edge, list) in sides.Where(pair => pair.Value.Count == 2).OrderBy(pair => pair.Key))
        {
            var isAgainst = list[0].IsForward == list[1].IsForward;
            across[list[0].Facet].Add((list[1].Facet, isAgainst, edge));
            across[list[1].Facet].Add((list[0].Facet, isAgainst, edge));
        }

        var turned = new bool?[across.Length];
        turned[0] = false;
        var queue = new Queue<int>([0]);
        while (queue.TryDequeue(out var facet))
        {
            foreach (var (other, isAgainst, edge) in across[facet])
            {
                if (turned[other] is null)
                {
                    turned[other] = turned[facet] ^ isAgainst;
                    queue.Enqueue(other);
                }
                else if (turned[other] != (turned[facet] ^ isAgainst))
                {
                    faults.Add($"{survey.Facets[other].Place}: the sheet comes back inside out at the edge {Edge(survey, edge)}", "a sheet with two sides; a facet is listed wrongly");
                    return turned;
                }
            }
        }

        var apart = Array.IndexOf(turned, null);
        if (apart >= 0)
        {
            faults.Add(
                FormattableString.Invariant($"{survey.Facets[apart].Place}: {turned.Count(turn => turn is null)} of {turned.Length} facets do not hang together with the first"),
                FormattableString.Invariant($"one sheet; facets hang together over a common edge, hubs nearer than {survey.WeldMm:0.###} mm being one (frame.survey.weld)"));
        }

        return turned;
    }

    private static void CheckBorders(FrameSurvey survey, ImmutableArray<SurveyFacet> facets, Dictionary<(int, int), List<(int Facet, bool IsForward)>> sides, SurveyFaults faults)
    {
        var loops = MeshLoops.Find(facets.Select(facet => facet.Hubs));
        if (loops.IsEmpty)
        {
            faults.Add(FormattableString.Invariant($"a closed sheet of {facets.Length} facets"), "a sheet open at the base; leave out the floor");
            return;
        }

        foreach (var hub in Pinched(survey, facets, sides).Take(SurveyFaults.Most))
        {
            faults.Add($"{survey.Hubs[hub].Place}: at hub {survey.Hubs[hub].Name} two sheets touch in one point", "facets round a hub that all hang together; part the hub in two or add the facet between");
        }

        if (faults.IsEmpty && survey.Hubs.Length - sides.Count + facets.Length != 2 - loops.Length)
        {
            faults.Add(
                FormattableString.Invariant($"{survey.Hubs.Length} hubs, {sides.Count} edges, {facets.Length} facets and {loops.Length} borders"),
                "a dome with openings: hubs - edges + facets = 2 - borders; a sheet with a handle or tunnel is none");
        }
    }

    /// <summary>Hubs where more than two sides of the border meet, or facets meet that share no edge there.</summary>
    private static IEnumerable<int> Pinched(FrameSurvey survey, ImmutableArray<SurveyFacet> facets, Dictionary<(int, int), List<(int Facet, bool IsForward)>> sides)
    {
        var border = new int[survey.Hubs.Length];
        var inner = new int[survey.Hubs.Length];
        foreach (var (edge, list) in sides)
        {
            var count = list.Count == 1 ? border : inner;
            count[edge.Item1]++;
            count[edge.Item2]++;
        }

        // Each facet at a hub has two sides there; they make one fan (facets = inner + 1) or one ring (facets = inner).
        // A ring beside a fan would pass this count, and fails Euler's.
        var around = new int[survey.Hubs.Length];
        foreach (var hub in facets.SelectMany(facet => facet.Hubs))
        {
            around[hub]++;
        }

        return Enumerable.Range(0, border.Length).Where(hub => border[hub] > 2 || around[hub] != inner[hub] + (border[hub] / 2));
    }

    private static string Edge(FrameSurvey survey, (int From, int To) edge) => $"{survey.Hubs[edge.From].Name} - {survey.Hubs[edge.To].Name}";
}
