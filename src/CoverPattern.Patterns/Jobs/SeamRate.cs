namespace CoverPattern.Patterns.Jobs;

/// <summary>The time that a make-up takes.</summary>
/// <param name="MakeUp">Its name; a closing seam has its own, such as "plain, closing", and else takes that of its make-up.</param>
/// <param name="Minutes">Minutes for a metre of seam, all its rows together, 0 or more.</param>
public sealed record SeamRate(string MakeUp, double Minutes);
