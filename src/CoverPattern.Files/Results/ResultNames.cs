using System;
using System.Collections.Immutable;
using System.IO;

namespace CoverPattern.Files.Results;

/// <summary>Names that the files of a result have, whatever their ending: a file carried along must have another.</summary>
internal static class ResultNames
{
    private const string Lay = "lay-";

    private static readonly ImmutableArray<string> Taken = ["frame", "job", "lays", "measuring", "pieces", "report", "summary"];

    /// <summary>The taken names, for messages.</summary>
    internal static string Listing => string.Join(", ", Taken) + " or " + Lay + "..., whatever the ending";

    /// <summary>Whether a file of this name could stand in the way of a result's own; small and capital letters count as one.</summary>
    internal static bool IsTaken(string name) =>
        Taken.Contains(Path.GetFileNameWithoutExtension(name), StringComparer.OrdinalIgnoreCase) || name.StartsWith(Lay, StringComparison.OrdinalIgnoreCase);
}
