using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Plots;

/// <summary>A folder does not hold a result that can be read.</summary>
public sealed class ResultUnreadableException : WorkException
{
    /// <param name="folder">The folder.</param>
    /// <param name="why">What is missing or wrong in it.</param>
    public ResultUnreadableException(string folder, string why)
        : base(folder, $"The folder {folder} holds no result to work from: {why}")
    {
    }
}
