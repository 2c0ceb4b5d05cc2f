using System;
using System.IO;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Surveys;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>A job file read from disk.</summary>
/// <param name="Text">Its bytes as typed.</param>
/// <param name="Job">The job, or null when it is wrong; then everything wrong has been said.</param>
internal sealed record JobSource(ReadOnlyMemory<byte> Text, Job? Job)
{
    // A job file larger than this is none; no more of it is read.
    private const int LargestBytes = 4 << 20;

    /// <summary>Reads a job and says everything that is wrong with it.</summary>
    internal static JobSource Read(string path, TextWriter error)
    {
        byte[] text;
        try
        {
            if (Directory.Exists(path))
            {
                error.WriteLine($"The job file {path} is a folder. Name the file in it, such as {Path.Combine(path, "job.json")}.");
                return new JobSource(default, null);
            }

            text = ReadAtMost(path, LargestBytes + 1);
            if (text.Length > LargestBytes)
            {
                error.WriteLine(FormattableString.Invariant($"The job file {path} has more than {LargestBytes} bytes, the most that is allowed."));
                return new JobSource(default, null);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            error.WriteLine($"The job file {path} cannot be read: {fault.Message}");
            return new JobSource(default, null);
        }

        var reading = JobReader.Read(text, name => Beside(path, name));
        FaultList.Print(path, reading.Faults, error);
        return new JobSource(text, reading.Job);
    }

    /// <summary>A file in the folder of the job, or null; one byte too many is enough to refuse it.</summary>
    private static byte[]? Beside(string path, string name)
    {
        try
        {
            return ReadAtMost(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, name), SurveyFile.MostBytes + 1);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The length of a file is not asked: a pipe has none.</summary>
    private static byte[] ReadAtMost(string path, int most)
    {
        using var file = File.OpenRead(path);
        var text = new byte[most];
        var count = file.ReadAtLeast(text, most, throwOnEndOfStream: false);
        return text[..count];
    }
}
