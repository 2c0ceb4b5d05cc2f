using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>Lays that the job names cannot be used; nothing is mended in silence.</summary>
public sealed class EarlierLaysRefusedException : WorkException
{
    private const int MostTold = 10;

    /// <param name="file">The file that holds the lays.</param>
    /// <param name="use">What for: "kept" or "locked".</param>
    /// <param name="findings">Everything that is wrong, at least one.</param>
    public EarlierLaysRefusedException(string file, string use, ImmutableArray<LayFinding> findings)
        : base(
            file,
            FormattableString.Invariant($"The lays of {file} cannot be {use}: {string.Join(" ", findings.Take(MostTold).Select(finding => finding.Text))}{(findings.Length > MostTold ? FormattableString.Invariant($" And {findings.Length - MostTold} faults more.") : string.Empty)} Mend the file, or take it out of the job and let the pieces be laid anew.")) => Findings = findings;

    /// <summary>Everything that is wrong.</summary>
    public ImmutableArray<LayFinding> Findings { get; }
}
