namespace CoverPattern.Patterns.Jobs;

/// <summary>What openings keep clear, measured from the outer edge of their rings.</summary>
/// <param name="Tube">To the wall of a strut's tube.</param>
/// <param name="Hub">To the rim of a hub.</param>
/// <param name="Seam">To a seam of the cover.</param>
/// <param name="Opening">To the ring of another opening.</param>
/// <param name="Hem">Height above the finished lower edge.</param>
/// <param name="Tight">What is above the least by less than this is allowed and told of.</param>
public sealed record ClearanceWish(Measure Tube, Measure Hub, Measure Seam, Measure Opening, Measure Hem, Measure Tight)
{
    /// <summary>The shop's own values: common practice, no source.</summary>
    public static ClearanceWish Usual { get; } = new(Mm(20), Mm(20), Mm(30), Mm(120), Mm(150), Mm(5));

    private static Measure Mm(double millimetres) => new(millimetres, System.FormattableString.Invariant($"{millimetres} mm"));
}
