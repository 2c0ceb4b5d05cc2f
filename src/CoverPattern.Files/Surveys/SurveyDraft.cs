using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Surveys;

/// <summary>A survey while its file is being read.</summary>
internal sealed class SurveyDraft
{
    private const int MostFaults = 10;

    private readonly List<SurveyHub> hubs = [];
    private readonly List<SurveyFacet> facets = [];
    private readonly List<SurveyStrut> struts = [];
    private readonly List<Fault> faults = [];

    /// <summary>Whether reading on is of no use.</summary>
    internal bool IsGivenUp { get; private set; }

    internal int HubCount => hubs.Count;

    internal IReadOnlyList<Fault> Faults => faults;

    /// <summary>Notes a fault; after the tenth the rest is not read.</summary>
    internal void Refuse(string said, string allowed)
    {
        faults.Add(new Fault("frame.survey", said, allowed));
        IsGivenUp |= faults.Count >= MostFaults;
    }

    /// <summary>Refuses a count that is stated before the things themselves come, and then reads none of them.</summary>
    internal void RefuseCount(long facetCount, long hubCount)
    {
        if (facetCount > SurveyMender.MostFacets)
        {
            RefuseAll(FormattableString.Invariant($"{facetCount} facets"), FormattableString.Invariant($"at most {SurveyMender.MostFacets} facets; leave out what is not the frame, or draw it with fewer facets"));
        }
        else if (hubCount > 3L * SurveyMender.MostHubs)
        {
            RefuseAll(FormattableString.Invariant($"{hubCount} corners"), FormattableString.Invariant($"at most {SurveyMender.MostHubs} hubs, each listed three times at most"));
        }
    }

    internal void RefuseAll(string said, string allowed)
    {
        Refuse(said, allowed);
        IsGivenUp = true;
    }

    internal void AddHub(string label, Point3 position, string place)
    {
        hubs.Add(new SurveyHub(label, position, place));
        RefuseIfTooMany();
    }

    internal void AddFacet(ImmutableArray<int> corners, string place)
    {
        facets.Add(new SurveyFacet(corners, place));
        RefuseIfTooMany();
    }

    internal void AddStrut(int from, int to, string place)
    {
        struts.Add(new SurveyStrut(from, to, place));
        if (struts.Count == 4 * SurveyMender.MostHubs)
        {
            RefuseAll(FormattableString.Invariant($"{place}: more than {struts.Count} struts"), FormattableString.Invariant($"the struts of at most {SurveyMender.MostHubs} hubs"));
        }
    }

    internal FrameSurvey Finish(string source) => new(source, [.. hubs], [.. facets], [.. struts]);

    private void RefuseIfTooMany()
    {
        if (facets.Count > SurveyMender.MostFacets)
        {
            RefuseAll(FormattableString.Invariant($"{facets[^1].Place}: more than {SurveyMender.MostFacets} facets"), "at most so many; leave out what is not the frame, or draw it with fewer facets");
        }
        else if (hubs.Count > 3 * SurveyMender.MostHubs)
        {
            RefuseAll(FormattableString.Invariant($"{hubs[^1].Place}: more than {3 * SurveyMender.MostHubs} corners"), FormattableString.Invariant($"at most {SurveyMender.MostHubs} hubs, each listed three times at most"));
        }
    }
}
