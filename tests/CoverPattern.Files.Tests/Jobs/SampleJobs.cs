using System;
using System.IO;
using System.Linq;
using Xunit.Sdk;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>The samples of the repository, found from where the tests run.</summary>
public static class SampleJobs
{
    public static TheoryData<string> Names => [.. FileNames()];

    internal static string[] FileNames() =>
        [.. Directory.GetFiles(Folder("samples"), "*.json").Select(Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal)];

    internal static string Text(string name) => File.ReadAllText(Path.Combine(Folder("samples"), name));

    internal static string Page(string name) => File.ReadAllText(Path.Combine(Folder("docs"), name));

    private static string Folder(string name)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CoverPattern.sln")))
            {
                return Path.Combine(folder.FullName, name);
            }
        }

        throw new XunitException("The repository of the tests is not above them.");
    }
}
