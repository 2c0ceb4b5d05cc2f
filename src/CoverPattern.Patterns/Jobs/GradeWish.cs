using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Pieces that bear flaws.</summary>
/// <param name="Pieces">Labels of pieces, with or without their cover in front, or kinds of pieces such as "patch".</param>
/// <param name="Grade">They may lie on flawed areas that ask for this grade or less, 1 to 9.</param>
public sealed record GradeWish(ImmutableArray<string> Pieces, int Grade);
