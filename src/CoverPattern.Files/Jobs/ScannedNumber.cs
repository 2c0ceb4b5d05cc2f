namespace CoverPattern.Files.Jobs;

/// <summary>A number as a scanner found it.</summary>
/// <param name="Value">Not negative.</param>
/// <param name="IsWhole">Whether it was written in digits alone.</param>
/// <param name="HasFraction">Whether it was written with a fraction stroke.</param>
internal readonly record struct ScannedNumber(decimal Value, bool IsWhole, bool HasFraction);
