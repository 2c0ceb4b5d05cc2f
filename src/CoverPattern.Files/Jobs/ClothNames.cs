using System.Linq;

namespace CoverPattern.Files.Jobs;

/// <summary>Names of cloths: they become parts of file names and of blocks in drawings on any system.</summary>
public static class ClothNames
{
    /// <summary>The form of a safe name as a regular expression.</summary>
    internal const string Pattern = "^[A-Za-z0-9](?:[A-Za-z0-9 _-]*[A-Za-z0-9])?$";

    /// <summary>Whether a name is letters a-z, digits, spaces, dashes and underscores, with a letter or digit at both ends.</summary>
    /// <param name="name">Any text.</param>
    public static bool IsSafe(string name) =>
        !string.IsNullOrEmpty(name)
        && name.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '_')
        && char.IsAsciiLetterOrDigit(name[0])
        && char.IsAsciiLetterOrDigit(name[^1]);

    /// <summary>The name with all that a file name may lose taken as equal: capitals, and spaces, dashes, underscores among each other.</summary>
    internal static string Sameness(string name) => name.Replace(' ', '-').Replace('_', '-').ToUpperInvariant();
}
