using System.Collections.Immutable;

namespace CoverPattern.Files.Results;

/// <summary>One zip of the roof.</summary>
/// <param name="Label">Its label.</param>
/// <param name="From">Hub where it starts, with pin and box.</param>
/// <param name="To">Hub where it stops.</param>
/// <param name="Seams">Seams it is sewn into, in order.</param>
/// <param name="LengthMm">Sewn length.</param>
/// <param name="SoldMm">Length bought.</param>
internal sealed record RoofZipFacts(string Label, string From, string To, ImmutableArray<string> Seams, double LengthMm, double SoldMm);
