using System.Text.RegularExpressions;

namespace CoverPattern.Files.Jobs;

/// <summary>Names of pieces that can stand in labels, which have no blanks of their own.</summary>
internal static partial class PieceNames
{
    /// <summary>The pattern of a safe name, for the schema.</summary>
    internal const string Pattern = "^[A-Za-z][A-Za-z0-9-]*$";

    internal static bool IsSafe(string name) => Safe().IsMatch(name);

    [GeneratedRegex(@"\A[A-Za-z][A-Za-z0-9-]*\z", RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex Safe();
}
