using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Folders;

/// <summary>The result cannot be put into the folder; what was there before is as it was.</summary>
public sealed class FolderException : WorkException
{
    public FolderException(string folder, string why)
        : base(folder, $"The folder {folder} cannot take the result: {why}")
    {
    }
}
