using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace CoverPattern.Cli.Tests.House;

/// <summary>The project's own files, found from where the tests run.</summary>
internal static class Repository
{
    internal static string Root { get; } = FindRoot();

    internal static IEnumerable<string> Sources(string folder) => Directory
        .EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
        .Where(file => !Parts(file).Any(part => part is "bin" or "obj"))
        .Order(StringComparer.Ordinal);

    internal static string[] Parts(string file) => Path.GetRelativePath(Root, file).Split(Path.DirectorySeparatorChar);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CoverPattern.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
