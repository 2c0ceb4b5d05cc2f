using System.Collections.Immutable;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop;

/// <summary>What came of a run: a result, or what in the job is wrong.</summary>
/// <param name="Result">Null when there are faults.</param>
/// <param name="Faults">Empty when there is a result.</param>
public sealed record WorkshopOutcome(Result? Result, ImmutableArray<Fault> Faults);
