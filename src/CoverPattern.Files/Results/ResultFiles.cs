using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Svg;

namespace CoverPattern.Files.Results;

/// <summary>Writes every file of a result.</summary>
public static class ResultFiles
{
    /// <summary>The files by name, all made from the one result and carrying the same labels.</summary>
    public static ImmutableSortedDictionary<string, byte[]> Write(Result result)
    {
        ArgumentNullException.ThrowIfNull(result);

        var files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        files.Add("job.json", result.JobText.ToArray());
        if (result.Job.Frame.Survey is { Source.Length: > 0 } survey)
        {
            files.Add(survey.Source, [.. survey.File]);
        }

        foreach (var outside in result.Job.Outside)
        {
            files.Add(outside.Source, [.. outside.File]);
        }

        files.Add("pieces.json", PiecesFile.Write(result.Pieces));
        files.Add("lays.json", LaysFile.Write(result.Lays));
        AddDrawing(files, "pieces", PatternSheet.Draw(result.Pieces, PaperNotes.Of(result.Job)));
        foreach (var (lay, name) in Named(result))
        {
            AddDrawing(files, name, LayDrawing.Draw(lay, result.Pieces, PaperNotes.Of(result.Job)));
        }

        files.Add(FramePaper.Name, FramePaper.Write(result.Job, result.Frame));
        files.Add(MeasuringPaper.Name, MeasuringPaper.Write(result.Job, result.Frame));
        if (result.Vents is { } vents)
        {
            files.Add(VentPaper.Name, VentPaper.Write(result.Job, vents));
        }

        files.Add("report.html", ReportFile.Write(result));
        files.Add(SummaryFile.Name, SummaryFile.Write(result, [.. files.Keys, SummaryFile.Name]));
        return files.ToImmutable();
    }

    private static void AddDrawing(ImmutableSortedDictionary<string, byte[]>.Builder files, string name, Drawing drawing)
    {
        files.Add(name + ".dxf", DxfWriter.Write(drawing));
        files.Add(name + ".svg", SvgWriter.Write(drawing));
    }

    /// <summary>One name a lay; a second lay of the same cloth carries its number.</summary>
    private static IEnumerable<(Lays.Lay Lay, string Name)> Named(Result result)
    {
        foreach (var (lay, count) in System.Linq.Enumerable.Zip(result.Lays, result.Estimate.Lays))
        {
            var number = count.Number == 1 ? string.Empty : "-" + count.Number.ToString(CultureInfo.InvariantCulture);
            yield return (lay, "lay-" + lay.Cloth + number);
        }
    }
}
