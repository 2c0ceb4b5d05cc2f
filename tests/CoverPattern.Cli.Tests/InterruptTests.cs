using System;
using System.Diagnostics;
using System.IO;
using System.Text;
using System.Threading;
using System.Threading.Tasks;

namespace CoverPattern.Cli.Tests;

/// <summary>The program as the system starts and ends it.</summary>
public sealed class InterruptTests : IDisposable
{
    // A search that ends by no count of its own within the test.
    private const string LongJob = """
        { "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 2, "cut": 3, "size": { "radius": "2 m" } }, "cloths": [ { "name": "canvas", "rollWidth": "2 m" } ], "lay": { "effort": 1000000 } }
        """;

    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // 2 is "cannot be done or cancelled"; a shell tells 128 and the signal's number, 2 or 15, of a program that a signal ended.
    [Theory]
    [InlineData("-INT", 1, 2)]
    [InlineData("-TERM", 1, 2)]
    [InlineData("-INT", 9, 130)]
    [InlineData("-TERM", 9, 143)]
    public async Task Make_ToldToEnd_BreaksOffAndToldAgainEndsAtOnce(string signal, int times, int expected)
    {
        var job = Path.Combine(folder, "job.json");
        await File.WriteAllTextAsync(job, LongJob, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        // Work that is not broken off would go on for hours.
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        using var program = Start(typeof(CommandLine).Assembly.Location, "make", job, "--out", Path.Combine(folder, "out"));
        using var end = patience.Token.Register(() => program.Kill());
        var said = new StringBuilder();
        while (!said.ToString().Contains("lays", StringComparison.Ordinal) && await program.StandardError.ReadLineAsync() is { } line)
        {
            said.AppendLine(line);
        }

        for (var i = 0; i < times; i++)
        {
            // The shell's own word: a bare machine may have no program of that name.
            using var shell = Process.Start("bash", ["-c", FormattableString.Invariant($"kill {signal} {program.Id}")]);
            await shell.WaitForExitAsync();
        }

        said.Append(await program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        // The second may come when the work has been broken off already.
        Assert.True(program.ExitCode is ExitCodes.CannotBeDone || program.ExitCode == expected, $"exit {program.ExitCode}");
        Assert.DoesNotContain("Unhandled", said.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(folder, "out")));
    }

    private static Process Start(params string[] words) =>
        Process.Start(new ProcessStartInfo("dotnet", words) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true })!;
}
