namespace CoverPattern.Patterns.Jobs;

/// <summary>Something a person should see though the work goes on.</summary>
/// <param name="Level">How loudly it speaks.</param>
/// <param name="Code">Stable short name for programs, such as "ponding".</param>
/// <param name="Place">Label or place it speaks of; may be empty.</param>
/// <param name="Text">Sentence for people, with numbers and limits.</param>
public sealed record Notice(NoticeLevel Level, string Code, string Place, string Text);
