using System;
using System.Threading;

namespace CoverPattern.Files.Plots;

/// <summary>What work on plots tells while it goes on, and the wish to end it.</summary>
/// <param name="Files">Told the name of each file when it is begun; null for nobody.</param>
/// <param name="Cancel">Looked at before each file, page and piece.</param>
public sealed record PlotWork(IProgress<string>? Files, CancellationToken Cancel)
{
    /// <summary>Nobody listens, nobody ends it.</summary>
    public static PlotWork Silent { get; } = new(null, CancellationToken.None);

    /// <summary>Begins a file.</summary>
    /// <exception cref="OperationCanceledException">The work is to end.</exception>
    internal void Begin(string file)
    {
        Cancel.ThrowIfCancellationRequested();
        Files?.Report(file);
    }
}
