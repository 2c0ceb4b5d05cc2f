using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Threading;
using CoverPattern.Files.Results;

namespace CoverPattern.Workshop.Folders;

/// <summary>Puts a result into a folder, whole or not at all.</summary>
/// <remarks>
/// The new files are first written to a folder of their own inside; then the earlier result steps aside, the new one takes
/// its place by renaming, and only then the earlier one goes. When anything fails on the way, everything steps back.
/// </remarks>
public static class ResultFolder
{
    private const string Arriving = ".arriving";
    private const string Leaving = ".leaving";

    /// <summary>Replaces the earlier result in a folder; files that are not of a result are left alone.</summary>
    /// <param name="folder">Made when it does not exist.</param>
    /// <param name="files">The files by name, summary.json among them: it lists the names, so that the next result knows its own.</param>
    /// <param name="cancel">Asked until the files begin to take their places.</param>
    /// <exception cref="FolderException">The folder holds only foreign files, is a file, is full or may not be written.</exception>
    /// <exception cref="OperationCanceledException">Cancelled; nothing has changed.</exception>
    public static void Replace(string folder, ImmutableSortedDictionary<string, byte[]> files, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(files);

        folder = Path.GetFullPath(folder);
        var earlier = Accept(folder, files.Keys);
        var existed = Directory.Exists(folder);
        try
        {
            Write(folder, files, cancel);
            Swap(folder, earlier, [.. files.Keys]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderException(folder, fault.Message);
        }
        finally
        {
            CleanUp(folder, existed);
        }
    }

    /// <summary>Finds out before any work whether a folder could take a result.</summary>
    /// <inheritdoc cref="Replace"/>
    public static void Try(string folder)
    {
        folder = Path.GetFullPath(folder);
        var existed = Directory.Exists(folder);
        Accept(folder, []);
        try
        {
            Write(folder, ImmutableSortedDictionary<string, byte[]>.Empty, CancellationToken.None);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderException(folder, fault.Message);
        }
        finally
        {
            CleanUp(folder, existed);
        }
    }

    /// <summary>Names of the earlier result's files, or a refusal.</summary>
    private static ImmutableArray<string> Accept(string folder, IEnumerable<string> coming)
    {
        if (File.Exists(folder))
        {
            throw new FolderException(folder, "it is a file. Name a folder.");
        }

        if (!Directory.Exists(folder))
        {
            return [];
        }

        try
        {
            Recover(folder);
            var present = Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)).ToHashSet(StringComparer.Ordinal);
            var own = OwnFiles(folder).Where(present.Contains).ToImmutableArray();
            if (own.IsEmpty && present.Any(name => name is not (Arriving or Leaving)))
            {
                throw new FolderException(folder, "it holds files, but no earlier result. Name an empty or a new folder.");
            }

            var foreign = coming.Where(name => present.Contains(name) && !own.Contains(name)).ToArray();
            return foreign.Length == 0
                ? own
                : throw new FolderException(folder, $"{string.Join(", ", foreign)} there is not of an earlier result. Move it away or name another folder.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new FolderException(folder, fault.Message);
        }
    }

    /// <summary>Takes back an earlier result that a broken-off run left aside; the summary moves last, so where it stands tells how far that run came.</summary>
    private static void Recover(string folder)
    {
        var leaving = Path.Combine(folder, Leaving);
        if (!Directory.Exists(leaving))
        {
            return;
        }

        var isReplaced = File.Exists(Path.Combine(folder, SummaryFile.Name)) && File.Exists(Path.Combine(leaving, SummaryFile.Name));
        foreach (var file in isReplaced ? [] : Directory.GetFiles(leaving))
        {
            File.Move(file, Path.Combine(folder, Path.GetFileName(file)), overwrite: true);
        }

        Discard(leaving);
    }

    private static ImmutableArray<string> OwnFiles(string folder)
    {
        var summary = Path.Combine(folder, SummaryFile.Name);
        return File.Exists(summary) ? SummaryFile.ReadFileNames(File.ReadAllBytes(summary)) : [];
    }

    private static void Write(string folder, ImmutableSortedDictionary<string, byte[]> files, CancellationToken cancel)
    {
        var arriving = Path.Combine(folder, Arriving);
        Discard(arriving);
        Directory.CreateDirectory(arriving);
        foreach (var (name, bytes) in files)
        {
            cancel.ThrowIfCancellationRequested();
            if (name != Path.GetFileName(name))
            {
                throw new ArgumentException($"{name} is no name of a file in the folder.", nameof(files));
            }

            using var stream = new FileStream(Path.Combine(arriving, name), FileMode.CreateNew, FileAccess.Write);
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }
    }

    private static void Swap(string folder, ImmutableArray<string> earlier, ImmutableArray<string> coming)
    {
        var moves = new Stack<(string From, string To)>();
        Directory.CreateDirectory(Path.Combine(folder, Leaving));
        try
        {
            foreach (var name in SummaryLast(earlier))
            {
                Move(Path.Combine(folder, name), Path.Combine(folder, Leaving, name), moves);
            }

            foreach (var name in SummaryLast(coming))
            {
                Move(Path.Combine(folder, Arriving, name), Path.Combine(folder, name), moves);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            foreach (var (from, to) in moves)
            {
                File.Move(to, from);
            }

            throw;
        }

        Discard(Path.Combine(folder, Leaving));
    }

    private static IEnumerable<string> SummaryLast(ImmutableArray<string> names) => names.OrderBy(name => name == SummaryFile.Name);

    private static void Move(string from, string to, Stack<(string From, string To)> moves)
    {
        File.Move(from, to);
        moves.Push((from, to));
    }

    private static void CleanUp(string folder, bool existed)
    {
        try
        {
            Discard(Path.Combine(folder, Arriving));
            DiscardEmpty(Path.Combine(folder, Leaving));
            if (!existed && Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
            {
                Directory.Delete(folder);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What cannot be cleared away stays; it is cleared by the next result.
        }
    }

    /// <summary>What could not be moved back stays aside for the next run to take back.</summary>
    private static void DiscardEmpty(string path)
    {
        if (Directory.Exists(path) && !Directory.EnumerateFileSystemEntries(path).Any())
        {
            Directory.Delete(path);
        }
    }

    private static void Discard(string path)
    {
        if (Directory.Exists(path))
        {
            Directory.Delete(path, recursive: true);
        }
    }
}
