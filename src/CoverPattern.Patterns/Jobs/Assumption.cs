namespace CoverPattern.Patterns.Jobs;

/// <summary>A value that nobody stated.</summary>
/// <param name="Place">Dotted place in the job file, such as "standOff.padding".</param>
/// <param name="Value">The value taken, as a person would type it.</param>
/// <param name="Standing">Where the default comes from, such as "common practice, no source".</param>
public sealed record Assumption(string Place, string Value, string Standing);
