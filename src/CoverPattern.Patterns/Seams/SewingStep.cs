using System.Collections.Immutable;

namespace CoverPattern.Patterns.Seams;

/// <summary>Seams that are sewn in one go.</summary>
/// <param name="Kind">What they join.</param>
/// <param name="Row">Row of facets, counted from the deck up, the upper one where two are joined; empty where none is meant.</param>
/// <param name="Seams">Labels of the lines, sorted.</param>
public sealed record SewingStep(SewingStepKind Kind, string Row, ImmutableArray<string> Seams);
