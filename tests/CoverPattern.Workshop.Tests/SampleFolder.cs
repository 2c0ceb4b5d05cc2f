using System;
using System.IO;

namespace CoverPattern.Workshop.Tests;

/// <summary>The sample jobs of the repository, found from where the tests run.</summary>
internal static class SampleFolder
{
    internal static string Path { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "CoverPattern.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("CoverPattern.sln is in no folder above the tests.");
        }

        return System.IO.Path.Combine(folder.FullName, "samples");
    }
}
