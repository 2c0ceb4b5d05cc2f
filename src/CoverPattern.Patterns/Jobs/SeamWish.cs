namespace CoverPattern.Patterns.Jobs;

/// <summary>How pieces are joined all over the cover.</summary>
/// <param name="MakeUp">The construction.</param>
/// <param name="Width">Plain: the allowance of each side; else the finished width. Positive.</param>
public sealed record SeamWish(SeamMakeUp MakeUp, Measure Width);
