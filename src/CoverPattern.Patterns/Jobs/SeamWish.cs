using System;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are joined.</summary>
/// <param name="MakeUp">The construction all over the cover, where nothing else is said.</param>
public sealed record SeamWish(MakeUp MakeUp)
{
    /// <summary>Struts, such as "H0.02-H1.01", at whose seam the other side than usual lies over.</summary>
    public ImmutableArray<string> Turned { get; init; } = [];

    /// <summary>Seams made otherwise; of two that name one seam the later holds.</summary>
    public ImmutableArray<SeamChoice> Others { get; init; } = [];

    /// <summary>Zips that take a part of a seam each.</summary>
    public ImmutableArray<SeamZip> Zips { get; init; } = [];

    /// <summary>The seam that is sewn last; null where none is kept open.</summary>
    public ClosingWish? Closing { get; init; }

    /// <summary>Every make-up that a seam may bear, by name: those stated, felled ones sewn plain where they would stop too soon, and closing forms.</summary>
    public ImmutableArray<MakeUp> Known()
    {
        MakeUp[] stated = [.. Others.Select(other => other.MakeUp).Prepend(MakeUp).DistinctBy(makeUp => makeUp.Name, StringComparer.Ordinal)];
        var plain = StopAtHubs ? stated.Where(makeUp => makeUp.IsFelled).Select(makeUp => makeUp.SewnPlain()) : [];
        var last = Closing is { } closing ? stated.Select(makeUp => makeUp.Closing(closing.Allowance.Millimetres)) : [];
        return [.. stated, .. plain, .. last, .. Zips.IsEmpty ? [] : new[] { SeamZip.MakeUp }];
    }

    /// <summary>Whether felled seams are sewn plain and trimmed where they come near a hub, under a patch.</summary>
    public bool StopAtHubs { get; init; }

    /// <summary>How the cut line goes round a corner between two seams.</summary>
    public CornerStyle Corners { get; init; } = CornerStyle.Mitred;

    /// <summary>The usual make-up of a form all over the cover.</summary>
    public static SeamWish Of(MakeUpForm form, Measure width) => new(MakeUp.Of(form, width));
}
