using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>The size of a frame that is not given by one measure.</summary>
internal static class NoSize
{
    /// <summary>Nothing, in no words.</summary>
    internal static readonly Measure Measure = new(0, "");
}
