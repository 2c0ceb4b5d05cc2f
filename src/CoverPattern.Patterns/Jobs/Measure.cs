namespace CoverPattern.Patterns.Jobs;

/// <summary>A length as a person gave it.</summary>
/// <param name="Millimetres">The length.</param>
/// <param name="Typed">The words of the job file, or of the default, such as "24 ft".</param>
public readonly record struct Measure(double Millimetres, string Typed);
