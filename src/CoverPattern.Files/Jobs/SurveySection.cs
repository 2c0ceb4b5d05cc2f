using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using CoverPattern.Files.Results;
using CoverPattern.Files.Surveys;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads the survey of a frame: a file beside the job, or lines in the job itself.</summary>
internal static partial class SurveySection
{
    /// <summary>Names of files that may stand beside a job: no folders, no odd letters, since a result carries the file on.</summary>
    internal const string NamePattern = "^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,76}[A-Za-z0-9])?\\.(?:csv|obj|ply|stl)$";

    private const int LongestLine = 200;
    private static readonly ImmutableArray<string> Instead = ["family", "frequency", "division", "up", "cut", "size", "stretch", "riser", "struts", "gores"];

    /// <summary>Reads the survey and puts it in order once, so that all faults are told before any work.</summary>
    /// <param name="frame">The section of the frame; it states a survey.</param>
    /// <param name="notes">Takes faults and assumptions.</param>
    /// <param name="beside">Gives the bytes of a file beside the job, null when there is none.</param>
    internal static FrameWish Read(JobSection frame, JobNotes notes, Func<string, byte[]?>? beside)
    {
        foreach (var name in Instead.Where(frame.States))
        {
            notes.Refuse(frame.PlaceOf(name), "stated beside a survey", "either survey, or family, frequency, cut and size");
        }

        var section = frame.Section("survey");
        var word = section.Take<string>("unit", Values.Word);
        var weld = section.Take<Measure>("weld", Values.Length);
        var classes = section.Take<Measure>("classes", Values.Length);
        var up = section.Take<SurveyUp>("up", Values.Word);
        var unit = word is null ? null : SurveyLines.UnitOf(word);
        var survey = notes.AreClean("frame") ? ReadPoints(section, notes, unit, beside) : null;
        survey = survey is null ? null : survey with { WeldMm = weld.Millimetres, ClassesMm = classes.Millimetres, Up = up };
        foreach (var fault in survey is null ? [] : SurveyMender.Mend(survey).Faults)
        {
            notes.Refuse(fault.Place, fault.Said, fault.Allowed);
        }

        return new FrameWish(default, 0, 0, "", default, NoSize.Measure) { Survey = survey };
    }

    internal static bool FileName(JobKey key, JsonElement element, out string? value, out string hint)
    {
        value = element.ValueKind == JsonValueKind.String ? element.GetString() : null;
        hint = value is not null && value.AsSpan().ContainsAny('/', '\\') ? "the file stands in the folder of the job: its name alone" : "";
        return value is not null && Name().IsMatch(value);
    }

    private static FrameSurvey? ReadPoints(JobSection section, JobNotes notes, double? unit, Func<string, byte[]?>? beside)
    {
        if (section.States("file") == section.States("lines"))
        {
            notes.Refuse(section.Place, section.States("file") ? "both file and lines" : "neither file nor lines", "one of file and lines");
            return null;
        }

        var reading = section.States("file") ? ReadFile(section, notes, unit, beside) : ReadLines(section, notes, unit);
        foreach (var fault in reading?.Faults ?? [])
        {
            notes.Refuse(fault.Place, fault.Said, fault.Allowed);
        }

        return reading?.Survey;
    }

    private static SurveyReading? ReadFile(JobSection section, JobNotes notes, double? unit, Func<string, byte[]?>? beside)
    {
        if (section.Take<string>("file", FileName) is not { } name)
        {
            return null;
        }

        if (ResultNames.IsTaken(name))
        {
            notes.Refuse(section.PlaceOf("file"), $"\"{name}\"", $"a name of its own, since the result carries the file beside its own files: not {ResultNames.Listing}; rename it, such as \"survey-{name}\"");
            return null;
        }

        if (beside?.Invoke(name) is not { } bytes)
        {
            notes.Refuse(section.PlaceOf("file"), $"\"{name}\", which cannot be read", "a file in the folder of the job file; or its lines in the job: " + section.PlaceOf("lines"));
            return null;
        }

        return SurveyFile.Read(name, bytes, unit);
    }

    private static SurveyReading? ReadLines(JobSection section, JobNotes notes, double? unit)
    {
        var items = section.Items("lines");
        foreach (var (place, element) in items.Where(item => item.Element.ValueKind != JsonValueKind.String || item.Element.GetString()!.Length > LongestLine || item.Element.GetString()!.Contains('\n', StringComparison.Ordinal)).Take(10))
        {
            notes.Refuse(place, JobNotes.Said(element), FormattableString.Invariant($"a line in quotes of at most {LongestLine} characters"));
        }

        return notes.AreClean("frame") ? SurveyFile.ReadLines([.. items.Select(item => item.Element.GetString()!)], unit) : null;
    }

    [GeneratedRegex(NamePattern, RegexOptions.None, matchTimeoutMilliseconds: -1)]
    private static partial Regex Name();
}
