using System;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Results;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Plots;

/// <summary>Reads a result back from its folder, so that nothing is computed twice.</summary>
public static class ResultReader
{
    // A file of this size is none of ours; it is not read.
    private const long LargestBytes = 1 << 30;

    /// <summary>Reads a result.</summary>
    /// <param name="folder">What "make" wrote.</param>
    /// <exception cref="ResultUnreadableException">A file is missing, cannot be read, is not what "make" wrote, or is of another result than the rest.</exception>
    public static StoredResult Read(string folder)
    {
        var head = Read(folder, SummaryFile.Name, file => SummaryHead.Read(file));
        var pieces = Read(folder, "pieces.json", file => PiecesFile.Read(file));
        var lays = Read(folder, "lays.json", file => LaysFile.Read(file));
        if (Mixture(head, pieces, lays) is { } fault)
        {
            throw new ResultUnreadableException(folder, fault + " Its files are not of one run: make the result again.");
        }

        return new StoredResult(pieces, lays, head);
    }

    /// <summary>What shows that the files are of several results; null when they fit.</summary>
    private static string? Mixture(SummaryHead head, PieceSet pieces, ImmutableArray<Lay> lays)
    {
        if (head.Patterns != pieces.Patterns.Length || head.Pieces != pieces.Pieces.Length)
        {
            return $"summary.json counts {head.Patterns} patterns and {head.Pieces} pieces, pieces.json holds {pieces.Patterns.Length} and {pieces.Pieces.Length}.";
        }

        // Cloths become names of files.
        if (pieces.Patterns.Select(pattern => pattern.Cloth).Concat(lays.Select(lay => lay.Cloth)).FirstOrDefault(name => !ClothNames.IsSafe(name)) is { } odd)
        {
            return $"A cloth is called \"{odd}\", which is no name of a cloth.";
        }

        var cloths = pieces.Patterns.ToDictionary(pattern => pattern.Id, pattern => pattern.Cloth, StringComparer.Ordinal);
        var left = pieces.Pieces.ToDictionary(piece => piece.Label, piece => cloths[piece.Pattern], StringComparer.Ordinal);
        foreach (var (lay, piece) in lays.SelectMany(lay => lay.Placements.SelectMany(place => place.Pieces).Select(piece => (lay, piece))))
        {
            if (!left.Remove(piece, out var cloth) || cloth != lay.Cloth)
            {
                return $"lays.json lays {piece} on {lay.Cloth}, which pieces.json does not cut from it.";
            }
        }

        return left.Count == 0 ? null : $"lays.json lays {string.Join(", ", left.Keys.Order(StringComparer.Ordinal).Take(5))} on no cloth.";
    }

    private static T Read<T>(string folder, string name, Func<byte[], T> read)
    {
        var path = Path.Combine(folder, name);
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                throw new ResultUnreadableException(folder, $"there is no {name} in it. Name a folder that \"coverpattern make\" wrote.");
            }

            return file.Length <= LargestBytes
                ? read(File.ReadAllBytes(path))
                : throw new ResultUnreadableException(folder, $"{name} has {file.Length} bytes; no result of this program is larger than {LargestBytes}.");
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
