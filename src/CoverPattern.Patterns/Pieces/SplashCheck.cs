using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Refuses a splash band that reaches above the second ring of hubs.</summary>
public static class SplashCheck
{
    /// <summary>One fault, or none.</summary>
    /// <param name="job">Its skirt is read.</param>
    /// <param name="shell">The finished surface.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);

        if (job.Skirt.Splash is not { } splash)
        {
            return [];
        }

        var lowest = shell.Nodes.Where(node => node.Label[^1] != 'f' && !node.Label.StartsWith("H0.", StringComparison.Ordinal) && !node.Label.StartsWith("H00.", StringComparison.Ordinal))
            .MinBy(node => node.AboveHem);
        return lowest is not null && lowest.AboveHem <= splash.Width.Millimetres
            ? [new Fault("skirt.splash.width", splash.Width.Typed, FormattableString.Invariant($"less than {lowest.AboveHem:0} mm, the height of hub {lowest.Label} above the finished edge: a splash band stays below the second ring of hubs"))]
            : [];
    }
}
