using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Finds the facets between struts.</summary>
/// <remarks>
/// The struts of each hub are put in order round it, seen along the line from the middle of the sphere that lies best on the
/// hubs; then each way round is walked, always taking the next strut. The longest way round is the base. Every other one is a
/// facet: struts alone cannot tell a facet from an opening. Right when no two struts cross seen from that middle.
/// </remarks>
internal static class FacetFinder
{
    internal static ImmutableArray<SurveyFacet> Find(FrameSurvey survey, SurveyFaults faults)
    {
        var neighbours = Neighbours(survey, faults);
        if (!faults.IsEmpty)
        {
            return [];
        }

        var rings = Walk(Sorted(survey, neighbours));
        var struts = neighbours.Sum(list => list.Count) / 2;
        if (survey.Hubs.Length - struts + rings.Count != 2)
        {
            faults.Add(
                FormattableString.Invariant($"{survey.Hubs.Length} hubs and {struts} struts, which close {rings.Count} ways round instead of {2 - survey.Hubs.Length + struts}"),
                "struts that hang together and do not cross each other seen from the middle of the frame; a missing or wrong strut is likely, else list the facets");
            return [];
        }

        var points = survey.Hubs.Select(hub => hub.Position).ToArray();
        var ground = MeshLoops.Longest([.. rings], points);
        return [.. rings.Where(ring => ring != ground).Select((ring, i) => new SurveyFacet(ring, "facet " + string.Join(" - ", ring.Select(hub => survey.Hubs[hub].Name))))];
    }

    private static List<int>[] Neighbours(FrameSurvey survey, SurveyFaults faults)
    {
        var neighbours = survey.Hubs.Select(_ => new List<int>()).ToArray();
        if (survey.Struts.IsEmpty)
        {
            faults.Add("neither facets nor struts", "lines \"facet\" or \"strut\" that name hubs");
            return neighbours;
        }

        foreach (var strut in survey.Struts)
        {
            if (neighbours[strut.From].Contains(strut.To))
            {
                faults.Add($"{strut.Place}: the strut {survey.Hubs[strut.From].Name} - {survey.Hubs[strut.To].Name} a second time", "each strut once");
            }

            neighbours[strut.From].Add(strut.To);
            neighbours[strut.To].Add(strut.From);
        }

        foreach (var (list, hub) in neighbours.Zip(survey.Hubs).Where(pair => pair.First.Count < 2))
        {
            faults.Add(FormattableString.Invariant($"{hub.Place}: hub {hub.Name} with {list.Count} strut"), "two struts or more at every hub");
        }

        return neighbours;
    }

    /// <summary>The neighbours of each hub, counter-clockwise seen from outside.</summary>
    private static int[][] Sorted(FrameSurvey survey, List<int>[] neighbours)
    {
        var points = survey.Hubs.Select(hub => hub.Position).ToArray();
        var middle = SphereFit.Centre(points);
        return [.. neighbours.Select((list, hub) =>
        {
            var outward = middle is { } centre ? (points[hub] - centre).Unit() : new Point3(0, 0, 1);
            var first = points[list[0]] - points[hub];
            var along = (first - (Point3.Dot(first, outward) * outward)).Unit();
            var across = Point3.Cross(outward, along);
            double Angle(int other)
            {
                var step = points[other] - points[hub];
                return Math.Atan2(Point3.Dot(step, across), Point3.Dot(step, along));
            }

            return list.OrderBy(Angle).ThenBy(other => other).ToArray();
        })];
    }

    /// <summary>Walks every side of every strut once; rings run counter-clockwise seen from outside.</summary>
    private static List<ImmutableArray<int>> Walk(int[][] sorted)
    {
        var rings = new List<ImmutableArray<int>>();
        var done = new HashSet<(int, int)>();
        foreach (var start in sorted.SelectMany((list, hub) => list.Select(other => (From: hub, To: other))))
        {
            var ring = ImmutableArray.CreateBuilder<int>();
            for (var side = start; done.Add(side);)
            {
                ring.Add(side.From);
                var round = sorted[side.To];
                var back = Array.IndexOf(round, side.From);
                side = (side.To, round[(back + round.Length - 1) % round.Length]);
            }

            if (ring.Count > 0)
            {
                rings.Add(ring.ToImmutable());
            }
        }

        return rings;
    }
}
