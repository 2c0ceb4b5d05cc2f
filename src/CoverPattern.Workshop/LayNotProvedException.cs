using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Lays;

namespace CoverPattern.Workshop;

/// <summary>A lay failed the exact check: the fault is ours, and nothing is written.</summary>
public sealed class LayNotProvedException : InvalidOperationException
{
    public LayNotProvedException(ImmutableArray<LayFinding> findings)
        : base("The lay failed its proof: " + string.Join(" ", findings.Take(3).Select(finding => finding.Text))) =>
        Findings = findings;

    /// <summary>Everything that the check found.</summary>
    public ImmutableArray<LayFinding> Findings { get; }
}
