using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Makes one hub of corners that lie at one place: meshes often list a corner once for each face.</summary>
internal static class SurveyWeld
{
    /// <summary>Welds corners without names; two named hubs at one place are a fault.</summary>
    internal static FrameSurvey Weld(FrameSurvey survey, SurveyFaults faults)
    {
        var first = FirstAtPlace(survey, faults);
        var facets = survey.Facets.Select(facet => facet with { Hubs = Rim([.. facet.Hubs.Select(hub => first[hub])]) }).ToImmutableArray();
        foreach (var (facet, raw) in facets.Zip(survey.Facets))
        {
            if (facet.Hubs.Length < 3 || facet.Hubs.Distinct().Count() < facet.Hubs.Length)
            {
                faults.Add($"{raw.Place}: a facet with fewer than three hubs, or the same hub twice", FormattableString.Invariant($"three hubs or more, each once; hubs nearer than {survey.WeldMm:0.###} mm count as one: take a smaller frame.survey.weld, or leave the facet out"));
            }
        }

        ImmutableArray<SurveyStrut> struts = [.. survey.Struts.Select(strut => strut with { From = first[strut.From], To = first[strut.To] })];
        foreach (var strut in struts.Where(strut => strut.From == strut.To))
        {
            faults.Add($"{strut.Place}: a strut from hub {survey.Hubs[strut.From].Name} to itself", "a strut between two hubs");
        }

        return faults.IsEmpty ? Kept(survey with { Facets = facets, Struts = struts }, faults) : survey;
    }

    /// <summary>Leaves out hubs that nothing uses; a named one is a slip.</summary>
    private static FrameSurvey Kept(FrameSurvey survey, SurveyFaults faults)
    {
        var used = survey.Facets.SelectMany(facet => facet.Hubs).Concat(survey.Struts.SelectMany(strut => new[] { strut.From, strut.To })).ToHashSet();
        foreach (var (hub, _) in survey.Hubs.Select((hub, i) => (hub, i)).Where(pair => pair.hub.Label.Length > 0 && !used.Contains(pair.i)))
        {
            faults.Add($"{hub.Place}: hub {hub.Name} with neither strut nor facet", "hubs that struts or facets name; add the missing ones or leave the hub out");
        }

        var kept = Enumerable.Range(0, survey.Hubs.Length).Where(used.Contains).ToArray();
        if (kept.Length > SurveyMender.MostHubs)
        {
            faults.Add(FormattableString.Invariant($"{kept.Length} hubs"), FormattableString.Invariant($"at most {SurveyMender.MostHubs} hubs"));
            return survey;
        }

        var fresh = kept.Select((old, at) => (old, at)).ToDictionary(pair => pair.old, pair => pair.at);
        return survey with
        {
            Hubs = [.. kept.Select(hub => survey.Hubs[hub])],
            Facets = [.. survey.Facets.Select(facet => facet with { Hubs = [.. facet.Hubs.Select(hub => fresh[hub])] })],
            Struts = [.. survey.Struts.Select(strut => strut with { From = fresh[strut.From], To = fresh[strut.To] })],
        };
    }

    /// <summary>The ring without the repeats that welding made.</summary>
    private static ImmutableArray<int> Rim(ImmutableArray<int> ring) => [.. ring.Where((hub, i) => hub != ring[(i + 1) % ring.Length])];

    /// <summary>For each hub the first one at its place, found in boxes as wide as the weld.</summary>
    private static int[] FirstAtPlace(FrameSurvey survey, SurveyFaults faults)
    {
        var first = Enumerable.Range(0, survey.Hubs.Length).ToArray();
        var boxes = new Dictionary<(long, long, long), List<int>>();
        var width = Math.Max(survey.WeldMm, 1e-6);
        foreach (var (hub, i) in survey.Hubs.Select((hub, i) => (hub, i)))
        {
            var box = ((long)Math.Floor(hub.Position.X / width), (long)Math.Floor(hub.Position.Y / width), (long)Math.Floor(hub.Position.Z / width));
            var near = Around(box).SelectMany(place => boxes.GetValueOrDefault(place) ?? []).Order()
                .FirstOrDefault(other => Point3.Distance(survey.Hubs[other].Position, hub.Position) <= survey.WeldMm, -1);
            if (near < 0)
            {
                (boxes.TryGetValue(box, out var list) ? list : boxes[box] = []).Add(i);
                continue;
            }

            first[i] = near;
            if (hub.Label.Length > 0)
            {
                faults.Add(
                    FormattableString.Invariant($"{hub.Place}: hub {hub.Name} lies {Point3.Distance(survey.Hubs[near].Position, hub.Position):0.###} mm from hub {survey.Hubs[near].Name}"),
                    FormattableString.Invariant($"hubs more than {survey.WeldMm:0.###} mm apart (frame.survey.weld); correct one of them"));
            }
        }

        return first;
    }

    private static IEnumerable<(long X, long Y, long Z)> Around((long X, long Y, long Z) box)
    {
        for (var x = -1; x <= 1; x++)
        {
            for (var y = -1; y <= 1; y++)
            {
                for (var z = -1; z <= 1; z++)
                {
                    yield return (box.X + x, box.Y + y, box.Z + z);
                }
            }
        }
    }
}
