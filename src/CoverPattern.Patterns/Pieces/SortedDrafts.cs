using System;
using System.Collections.Immutable;
using System.Globalization;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Drafts sorted by equal shape.</summary>
/// <param name="Models">The first draft of each kind.</param>
/// <param name="Matches">For each draft the index of its kind and how it equals the model.</param>
internal sealed record SortedDrafts(ImmutableArray<PieceDraft> Models, ImmutableArray<(int Model, DraftMatch Match)> Matches)
{
    /// <summary>Id of the pattern of a kind, padded so that ids sort as text.</summary>
    internal string PatternId(int model)
    {
        var digits = Math.Max(2, Models.Length.ToString(CultureInfo.InvariantCulture).Length);
        return "T" + (model + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
    }
}
