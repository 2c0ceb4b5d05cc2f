using System;
using System.Collections.Immutable;
using System.IO;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Plots;

/// <summary>Reads pieces and lays back from a result folder, so that nothing is computed twice.</summary>
public static class ResultReader
{
    // A file of this size is none of ours; it is not read.
    private const long LargestBytes = 1 << 30;

    /// <summary>Reads a result.</summary>
    /// <param name="folder">What "make" wrote.</param>
    /// <exception cref="ResultUnreadableException">A file is missing, cannot be read, or is not what "make" wrote.</exception>
    public static (PieceSet Pieces, ImmutableArray<Lay> Lays) Read(string folder) =>
        (Read(folder, "pieces.json", file => PiecesFile.Read(file)), Read(folder, "lays.json", file => LaysFile.Read(file)));

    private static T Read<T>(string folder, string name, Func<byte[], T> read)
    {
        var path = Path.Combine(folder, name);
        try
        {
            var file = new FileInfo(path);
            return file is { Exists: true, Length: <= LargestBytes }
                ? read(File.ReadAllBytes(path))
                : throw new ResultUnreadableException(folder, $"there is no {name} in it. Name a folder that \"coverpattern make\" wrote.");
        }
        catch (ResultFormatException fault)
        {
            throw new ResultUnreadableException(folder, $"{name} is not as \"coverpattern make\" wrote it: {fault.Message}");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new ResultUnreadableException(folder, $"{name} cannot be read: {fault.Message}");
        }
    }
}
