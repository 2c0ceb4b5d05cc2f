using System.Collections.Immutable;

namespace CoverPattern.Files.Frames;

/// <summary>One thing to measure.</summary>
/// <param name="Number">Number of the measure, as in the pictures; empty where it goes on with the one before.</param>
/// <param name="What">What to measure, and how.</param>
/// <param name="Own">The job's own number; empty before there is a job.</param>
/// <param name="Blanks">A word for each blank to be filled in, mostly empty.</param>
internal sealed record MeasuringItem(string Number, string What, string Own, ImmutableArray<string> Blanks);
