using System;
using System.IO;
using System.Linq;
using CoverPattern.Files.Tests.Drawings;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>The samples of the repository, found from where the tests run.</summary>
public static class SampleJobs
{
    public static TheoryData<string> Names => [.. FileNames()];

    internal static string[] FileNames() =>
        [.. Directory.GetFiles(Folder("samples"), "*.json").Select(Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal)];

    internal static string Text(string name) => File.ReadAllText(Path.Combine(Folder("samples"), name));

    internal static string Page(string name) => File.ReadAllText(Path.Combine(Folder("docs"), name));

    private static string Folder(string name) => Path.Combine(ReaderPrograms.Repository(), name);
}
