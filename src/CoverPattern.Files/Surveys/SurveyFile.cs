using System;
using System.Collections.Immutable;
using System.IO;
using System.Text;

namespace CoverPattern.Files.Surveys;

/// <summary>Reads a survey from the bytes of a file: lines of hubs, or a mesh as OBJ, PLY or STL.</summary>
/// <remarks>Never throws for what stands in the file. The forms are told in docs/frame.md.</remarks>
public static class SurveyFile
{
    /// <summary>Most bytes that a survey may have.</summary>
    public const int MostBytes = 8 << 20;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: false);

    /// <summary>Endings of file names that are known.</summary>
    public static ImmutableArray<string> Endings { get; } = [".csv", ".obj", ".ply", ".stl"];

    /// <summary>Reads a survey.</summary>
    /// <param name="name">Name of the file; its ending tells the form.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="unit">Millimetres in one unit of its bare numbers; null when nobody says.</param>
    public static SurveyReading Read(string name, ReadOnlySpan<byte> bytes, double? unit)
    {
        ArgumentNullException.ThrowIfNull(name);

        var draft = new SurveyDraft();
        var ending = Path.GetExtension(name).ToLowerInvariant();
        if (bytes.Length > MostBytes)
        {
            draft.RefuseAll(FormattableString.Invariant($"{name}: a file of {bytes.Length} bytes or more"), FormattableString.Invariant($"at most {MostBytes} bytes; a frame of {Patterns.Frames.SurveyMender.MostFacets} facets needs less"));
        }
        else if (!Endings.Contains(ending))
        {
            draft.RefuseAll($"{name}: a file of unknown form", "names that end in " + string.Join(", ", Endings));
        }
        else if (unit is null && ending != ".csv")
        {
            draft.RefuseAll($"{name}: a mesh without a unit", "\"frame.survey.unit\": \"mm\", \"cm\", \"m\", \"in\" or \"ft\"; a mesh does not tell its own");
        }
        else
        {
            Read(ending, bytes, unit, draft);
        }

        var survey = draft.Faults.Count == 0 ? draft.Finish(name) with { File = [.. bytes] } : null;
        return new SurveyReading(survey, [.. draft.Faults]);
    }

    /// <summary>Reads a survey from lines that stand in the job itself.</summary>
    /// <param name="lines">Lines of the CSV form.</param>
    /// <param name="unit">Millimetres in one unit of bare numbers; null when nobody says.</param>
    public static SurveyReading ReadLines(ImmutableArray<string> lines, double? unit)
    {
        var draft = new SurveyDraft();
        SurveyLines.Read(string.Join('\n', lines), unit, draft);
        return new SurveyReading(draft.Faults.Count == 0 ? draft.Finish("") : null, [.. draft.Faults]);
    }

    private static void Read(string ending, ReadOnlySpan<byte> bytes, double? unit, SurveyDraft draft)
    {
        switch (ending)
        {
            case ".csv":
                SurveyLines.Read(Text(bytes).TrimStart('\uFEFF'), unit, draft);
                break;
            case ".obj":
                ObjMesh.Read(Utf8.GetString(bytes), unit!.Value, draft);
                break;
            case ".ply":
                PlyMesh.Read(bytes, unit!.Value, draft);
                break;
            default:
                StlMesh.Read(bytes, unit!.Value, draft);
                break;
        }
    }

    /// <summary>Tables saved as "Unicode text" are UTF-16 and say so by their first two bytes; all else is UTF-8.</summary>
    private static string Text(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes),
        _ => Utf8.GetString(bytes),
    };
}
