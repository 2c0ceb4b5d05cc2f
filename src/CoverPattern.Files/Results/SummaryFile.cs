using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Reports;

namespace CoverPattern.Files.Results;

/// <summary>Writes summary.json: the numbers of a result at a glance.</summary>
public static class SummaryFile
{
    /// <summary>Its name in the result folder.</summary>
    public const string Name = "summary.json";

    /// <summary>What "lengths" says of a shop that measures in inches and feet.</summary>
    internal const string Inches = "inches";

    /// <summary>Writes the file.</summary>
    /// <param name="result">The result.</param>
    /// <param name="files">Names of all files of the result, this one included.</param>
    /// <returns>UTF-8 text, the same for the same result; every field is told in docs/files.md.</returns>
    public static byte[] Write(Result result, IEnumerable<string> files)
    {
        ArgumentNullException.ThrowIfNull(result);

        var job = result.Job;
        var numbers = SummaryNumbers.Of(result);
        var summary = ResultHeader.Begin("Frame numbers are the frame's own; cover, hem, pieces, seams and lays are finished sizes, ease included.");
        summary["program"] = ProgramVersion.Text;
        summary["title"] = job.Title;
        summary["date"] = job.Date.ToString("O", System.Globalization.CultureInfo.InvariantCulture);
        summary["covers"] = job.Covers;
        summary["seed"] = job.Lay.Seed;
        summary["effort"] = job.Lay.Effort;
        summary["lengths"] = Ruler.Of(job).IsInches ? Inches : "millimetres";
        summary["frame"] = SummaryFields.Frame(result.Frame);
        summary["cover"] = SummaryFields.Cover(result, numbers);
        summary["hem"] = SummaryFields.Hem(result, numbers);
        summary["pieces"] = new JsonObject { ["distinct"] = result.Pieces.Patterns.Length, ["total"] = result.Pieces.Pieces.Length };
        summary["seams"] = SummaryFields.Seams(result, numbers);
        summary["crossings"] = SummaryFields.Crossings(result.Crossings);
        summary["ties"] = SummaryFields.Ties(result.Pieces.Ties);
        summary["fittings"] = SummaryFields.Fittings(result.Pieces.Fittings);
        summary["clipPatches"] = SummaryFields.ClipPatches(result.Pieces.ClipPatches);
        if (result.Vents is { } vents)
        {
            summary["vents"] = new JsonObject { ["lowM2"] = Round(vents.LowM2), ["highM2"] = Round(vents.HighM2), ["heightMm"] = Round(vents.HeightMm) };
        }

        if (RoofFacts.Of(result) is { } roof)
        {
            summary["roof"] = roof.ToJson();
        }

        if (!result.Pipes.IsEmpty)
        {
            summary["pipes"] = JsonWords.List(PipeFacts.Of(result), pipe => pipe.ToJson());
        }

        summary["lays"] = SummaryFields.Lays(result);
        summary["cloth"] = SummaryFields.Cloth(result.Estimate);
        summary["buying"] = CostFields.Buying(result.Estimate);
        summary["buyingNotions"] = CostFields.Notions(result.Estimate.Total.Notions);
        summary["cost"] = CostFields.Cost(result.Estimate.Cost);
        summary["assumed"] = SummaryFields.Assumed(job);
        summary["notices"] = SummaryFields.Notices(result.Notices);
        summary["files"] = new JsonArray([.. files.Order(StringComparer.Ordinal).Select(name => (JsonNode)name)]);
        return JsonLayout.Write(summary);
    }

    /// <summary>Names of the files that a result in a folder consists of.</summary>
    /// <param name="file">Content of a summary.json.</param>
    /// <returns>Plain names without any path; empty when the file is not one of ours.</returns>
    public static ImmutableArray<string> ReadFileNames(ReadOnlySpan<byte> file)
    {
        try
        {
            var names = JsonNode.Parse(file)?["files"] as JsonArray;
            return names is null
                ? []
                : [.. names.Select(name => name!.GetValue<string>()).Where(name => name == System.IO.Path.GetFileName(name) && name is not ("" or "." or ".."))];
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or NullReferenceException)
        {
            return [];
        }
    }

    /// <summary>The form of plots that the summary of a plot folder tells; null for that of a result, and for what is none.</summary>
    /// <param name="file">Any bytes.</param>
    public static string? ReadForm(ReadOnlySpan<byte> file)
    {
        try
        {
            return (JsonNode.Parse(file) as JsonObject)?["form"]?.GetValue<string>();
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Numbers are rounded to a millionth: enough for any check, and free of the last digit's noise.</summary>
    internal static double Round(double value) => Math.Round(value, 6);
}
