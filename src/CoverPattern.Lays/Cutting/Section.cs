using System.Collections.Immutable;

namespace CoverPattern.Lays.Cutting;

/// <summary>A stretch of a lay that a short machine does in one go.</summary>
/// <param name="Number">From 1.</param>
/// <param name="FromMm">Where it begins along the roll, millimetres from the cut end.</param>
/// <param name="ToMm">Where it ends.</param>
/// <param name="Whole">Labels of pieces that lie in it wholly.</param>
/// <param name="Parted">Labels of pieces of which another section has a part.</param>
public sealed record Section(int Number, double FromMm, double ToMm, ImmutableArray<string> Whole, ImmutableArray<string> Parted);
