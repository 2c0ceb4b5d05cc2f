using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Tells what the lower edge asks of sewers and fitters.</summary>
public static class HemCheck
{
    /// <summary>Yields the notices.</summary>
    /// <param name="job">Its hem is read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    public static ImmutableArray<Notice> Check(Job job, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);

        return [.. Fixings(job, shell, HemCount.Of(job.Hem, cut)), .. Made(job, HemCount.Of(job.Hem, cut))];
    }

    private static IEnumerable<Notice> Fixings(Job job, Shell shell, HemCount count)
    {
        if (job.Hem.Fixings is not { } fixings)
        {
            yield break;
        }

        var bare = shell.Nodes.Where(node => node.Label.StartsWith("H0.", StringComparison.Ordinal) && !node.Label.EndsWith('f') && node.AboveHem < fixings.Height.Millimetres).ToArray();
        if (bare.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "fixings-at-bare-hubs",
                bare[0].Label,
                FormattableString.Invariant($"At {bare.Length} base hubs the skirt is lower than the {fixings.Height.Millimetres:0.#} mm at which the hem is to be held: there the point lies where the seams of the facets meet, and is drawn lower or not at all. Let the skirt hang lower, or hold it there by hand."));
        }

        yield return new Notice(
            NoticeLevel.Note,
            "hem-fixings",
            string.Empty,
            FormattableString.Invariant($"The hem is held at {count.Fixings} points a cover, {fixings.Height.Millimetres:0.#} mm over its finished edge: at every base hub and between at most {fixings.Spacing.Typed} apart (3 % more let pass). They are drawn, never pierced before the cover hangs."));
    }

    private static IEnumerable<Notice> Made(Job job, HemCount count)
    {
        if (job.Hem.Fitting is { } fitting)
        {
            yield return new Notice(
                NoticeLevel.Note,
                "hem-for-fitting",
                "hem.fitting",
                FormattableString.Invariant($"The hem is cut {fitting.Typed} longer, to be trimmed on the frame: fold it only then, along the drawn finish line as it was corrected there."));
        }

        if (job.Hem.Gap is { } gap)
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "hem-broken-at-hubs",
                "hem.gap",
                FormattableString.Invariant($"Within {gap.Typed} of every base hub the hem has no cloth to turn up: the edge is raw there and must be bound, {count.Gaps} lengths of {count.BoundMm / Math.Max(1, count.Gaps):0} mm on one cover, {count.BoundMm / 1000:0.00} m in all."));
        }
    }
}
