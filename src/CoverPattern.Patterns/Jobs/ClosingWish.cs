namespace CoverPattern.Patterns.Jobs;

/// <summary>The seam that is kept open until the girth is measured, and sewn last.</summary>
/// <param name="At">Label of the base hub it rises from, such as "H0.08"; <see cref="Rear"/> takes the one opposite the front.</param>
/// <param name="Allowance">Cloth beyond the sew line on each side.</param>
/// <param name="To">Ring of hubs at which it ends, counted from 0 at the base; null for the ring below the top row.</param>
public sealed record ClosingWish(string At, Measure Allowance, int? To)
{
    /// <summary>The word for the base hub opposite the front.</summary>
    public const string Rear = "rear";
}
