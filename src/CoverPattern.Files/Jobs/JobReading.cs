using System.Collections.Immutable;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>What came of reading a job file.</summary>
/// <param name="Job">The job; null when there are faults.</param>
/// <param name="Faults">All that is wrong with it, in the order in which a job is written; empty when there is a job.</param>
public sealed record JobReading(Job? Job, ImmutableArray<Fault> Faults);
