using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Collects what is wrong with a survey.</summary>
internal sealed class SurveyFaults
{
    /// <summary>No more than this many are told: the rest is seldom anything else.</summary>
    internal const int Most = 10;

    private readonly List<Fault> faults = [];

    internal bool IsEmpty => faults.Count == 0;

    internal bool IsFull => faults.Count >= Most;

    internal ImmutableArray<Fault> All => [.. faults];

    /// <param name="said">Place in the survey and value.</param>
    /// <param name="allowed">Limit and way out.</param>
    internal void Add(string said, string allowed)
    {
        if (!IsFull)
        {
            faults.Add(new Fault("frame.survey", said, allowed));
        }
    }
}
