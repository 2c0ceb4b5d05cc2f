using System;
using System.IO;

namespace CoverPattern.Cli;

/// <summary>Shows which file is being made, a line each.</summary>
internal sealed class FileLines(TextWriter error) : IProgress<string>
{
    public void Report(string value) => error.WriteLine(value);
}
