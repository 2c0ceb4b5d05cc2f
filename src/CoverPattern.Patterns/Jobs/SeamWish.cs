using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are joined all over the cover.</summary>
/// <param name="MakeUp">The construction.</param>
public sealed record SeamWish(MakeUp MakeUp)
{
    /// <summary>Struts, such as "H0.02-H1.01", at whose seam the other side than usual lies over.</summary>
    public ImmutableArray<string> Turned { get; init; } = [];

    /// <summary>The usual make-up of a form all over the cover.</summary>
    public static SeamWish Of(MakeUpForm form, Measure width) => new(MakeUp.Of(form, width));
}
