using System;
using System.IO;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>A job file read from disk.</summary>
/// <param name="Text">Its bytes as typed.</param>
/// <param name="Job">The job, or null when it is wrong; then everything wrong has been said.</param>
internal sealed record JobSource(ReadOnlyMemory<byte> Text, Job? Job)
{
    // A job file larger than this is none; it is not even read.
    private const long LargestBytes = 4 << 20;

    /// <summary>Reads a job and says everything that is wrong with it.</summary>
    internal static JobSource Read(string path, TextWriter error)
    {
        byte[] text;
        try
        {
            var length = new FileInfo(path).Length;
            if (length > LargestBytes)
            {
                error.WriteLine(FormattableString.Invariant($"The job file {path} has {length} bytes; at most {LargestBytes} are allowed."));
                return new JobSource(default, null);
            }

            text = File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            error.WriteLine($"The job file {path} cannot be read: {fault.Message}");
            return new JobSource(default, null);
        }

        var reading = JobReader.Read(text);
        FaultList.Print(path, reading.Faults, error);
        return new JobSource(text, reading.Job);
    }
}
