using System;
using System.Diagnostics;
using System.IO;
using System.Text;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>Runs programs of other makers that read our files. A program that is not installed fails the test.</summary>
internal static class ReaderPrograms
{
    /// <summary>The Python for which Debian's ezdxf is installed; another one may come first on the path.</summary>
    public const string Python = "/usr/bin/python3";

    /// <summary>Runs a program on a file that exists only meanwhile.</summary>
    /// <param name="file">What the file holds.</param>
    /// <param name="ending">How its name ends, such as ".dxf".</param>
    /// <param name="program">The program.</param>
    /// <param name="arguments">From the file's name to the program's arguments.</param>
    /// <returns>What the program wrote to its output, as text.</returns>
    public static string Run(byte[] file, string ending, string program, Func<string, string[]> arguments)
    {
        var folder = Directory.CreateTempSubdirectory("cover-pattern-");
        try
        {
            var name = Path.Combine(folder.FullName, "drawing" + ending);
            File.WriteAllBytes(name, file);
            return Run(program, arguments(name));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The folder of this repository in which the sources lie.</summary>
    public static string Repository()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CoverPattern.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("The tests must run inside the repository.");
    }

    private static string Run(string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.Environment["PYTHONIOENCODING"] = "utf-8";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var faults = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}: {faults.GetAwaiter().GetResult()}");
        return output;
    }
}
