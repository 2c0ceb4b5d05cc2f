using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A file of lays that a job names.</summary>
/// <param name="File">Its name.</param>
/// <param name="Lays">What stands in it.</param>
public sealed record EarlierLays(string File, ImmutableArray<EarlierLay> Lays);
