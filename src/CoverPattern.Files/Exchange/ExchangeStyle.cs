using System.Collections.Immutable;

namespace CoverPattern.Files.Exchange;

/// <summary>What one exchange file holds: a style and its pieces.</summary>
/// <param name="Name">Name of the style.</param>
/// <param name="Date">Day of making as the file has it, day-month-year; empty when not told.</param>
/// <param name="Pieces">Its pieces in the file's order.</param>
public sealed record ExchangeStyle(string Name, string Date, ImmutableArray<ExchangePiece> Pieces);
