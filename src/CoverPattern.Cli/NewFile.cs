using System;
using System.IO;

namespace CoverPattern.Cli;

/// <summary>A file that a command writes beside what it prints; nothing that exists is written over.</summary>
internal static class NewFile
{
    /// <summary>Writes a file into a folder, which is made when missing.</summary>
    /// <param name="folder">Null: nothing is to be written.</param>
    /// <param name="name">Name of the file.</param>
    /// <param name="bytes">What stands in it.</param>
    /// <param name="error">Told why it cannot be.</param>
    /// <returns>An exit code.</returns>
    internal static int Write(string? folder, string name, byte[] bytes, TextWriter error)
    {
        if (folder is null)
        {
            return ExitCodes.Done;
        }

        var path = Path.Combine(folder, name);
        if (string.IsNullOrWhiteSpace(folder) || File.Exists(folder) || Path.Exists(path))
        {
            error.WriteLine(Path.Exists(path) && !string.IsNullOrWhiteSpace(folder) ? $"{path} exists already. Name another folder, or move it away." : $"--out: said \"{folder}\". Name a folder.");
            return ExitCodes.JobWrong;
        }

        try
        {
            Directory.CreateDirectory(folder);
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(bytes);
            return ExitCodes.Done;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            error.WriteLine($"{path} cannot be written: {fault.Message}");
            return ExitCodes.JobWrong;
        }
    }
}
