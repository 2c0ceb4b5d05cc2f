using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are joined all over the cover.</summary>
/// <param name="MakeUp">The construction.</param>
public sealed record SeamWish(MakeUp MakeUp)
{
    /// <summary>Struts, such as "H0.02-H1.01", at whose seam the other side than usual lies over.</summary>
    public ImmutableArray<string> Turned { get; init; } = [];

    /// <summary>Whether felled seams are sewn plain and trimmed where they come near a hub, under a patch.</summary>
    public bool StopAtHubs { get; init; }

    /// <summary>How the cut line goes round a corner between two seams.</summary>
    public CornerStyle Corners { get; init; } = CornerStyle.Mitred;

    /// <summary>The usual make-up of a form all over the cover.</summary>
    public static SeamWish Of(MakeUpForm form, Measure width) => new(MakeUp.Of(form, width));
}
