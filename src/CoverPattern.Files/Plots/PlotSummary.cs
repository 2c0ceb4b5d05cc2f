using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;

namespace CoverPattern.Files.Plots;

/// <summary>The files of a plot folder while they are made, and the summary that tells what is in each.</summary>
/// <param name="form">The form of the plots, as the command says it.</param>
/// <param name="view">How what is plotted is seen.</param>
/// <param name="work">Told of each file.</param>
internal sealed class PlotSummary(string form, string view, PlotWork? work = null)
{
    private readonly ImmutableSortedDictionary<string, byte[]>.Builder files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
    private readonly JsonArray plots = [];

    /// <summary>Tells that a file is begun.</summary>
    /// <exception cref="OperationCanceledException">The work is to end.</exception>
    internal void Begin(string name) => work?.Begin(name);

    /// <summary>Adds a file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="facts">What the summary says of it after its name.</param>
    internal void Add(string name, byte[] content, JsonObject facts)
    {
        files.Add(name, content);
        facts.Insert(0, "file", name);
        plots.Add(facts);
    }

    /// <summary>All files, the summary among them.</summary>
    internal ImmutableSortedDictionary<string, byte[]> Files()
    {
        var summary = ResultHeader.Begin(view);
        summary["program"] = ProgramVersion.Text;
        summary["form"] = form;
        summary["plots"] = plots;
        summary["files"] = Labels(files.Keys.Append(SummaryFile.Name).Order(StringComparer.Ordinal));
        files.Add(SummaryFile.Name, JsonLayout.Write(summary));
        return files.ToImmutable();
    }

    internal static JsonArray Labels(IEnumerable<string> labels) => JsonWords.List(labels, label => JsonValue.Create(label));
}
