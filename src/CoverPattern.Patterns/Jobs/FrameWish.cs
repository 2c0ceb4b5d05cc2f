namespace CoverPattern.Patterns.Jobs;

/// <summary>The frame the customer has or will build.</summary>
/// <param name="Family">The solid divided.</param>
/// <param name="Frequency">Parts into which an edge of the solid is divided, 1 to 8.</param>
/// <param name="Rows">Rows of facets kept, counted from the top: 1 to 3 x frequency - 1.</param>
/// <param name="Cut">The rows as typed, such as "5/8".</param>
/// <param name="Measure">What <paramref name="Size"/> states.</param>
/// <param name="Size">Positive length.</param>
public sealed record FrameWish(FrameFamily Family, int Frequency, int Rows, string Cut, FrameMeasure Measure, Measure Size);
