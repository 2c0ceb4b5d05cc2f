using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Tells how many of random jobs were refused, and why: a bound alone would not show it grow.</summary>
internal static class Refusals
{
    /// <param name="jobs">How many were tried.</param>
    /// <param name="refused">The first reason of each that was refused: place, then what was said.</param>
    public static string Told(int jobs, IReadOnlyCollection<string> refused)
    {
        var reasons = refused.CountBy(reason => reason.Split(':')[0]).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => FormattableString.Invariant($"{pair.Value} at {pair.Key}"));
        return FormattableString.Invariant($"{refused.Count} of {jobs} were refused") + (refused.Count > 0 ? ": " + string.Join(", ", reasons) : string.Empty);
    }
}
