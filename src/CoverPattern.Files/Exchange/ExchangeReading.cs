using System.Collections.Immutable;

namespace CoverPattern.Files.Exchange;

/// <summary>What came of reading an exchange file.</summary>
/// <param name="Style">The pieces; null when there are faults.</param>
/// <param name="Faults">What is wrong, all of it up to fifty.</param>
/// <param name="Notes">What was left aside without harm.</param>
public sealed record ExchangeReading(ExchangeStyle? Style, ImmutableArray<ExchangeFault> Faults, ImmutableArray<string> Notes);
