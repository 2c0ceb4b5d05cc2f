using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Surveys;

/// <summary>Reads corners and faces of a PLY file, text or binary; other elements and properties are passed over.</summary>
internal static class PlyMesh
{
    private const int LongestHead = 64 * 1024;

    private static readonly ImmutableArray<string> Axes = ["x", "y", "z"];

    private static readonly ImmutableArray<string> Formats = ["ascii", "binary_little_endian", "binary_big_endian"];

    private static readonly ImmutableArray<string> Types =
    [
        "char", "uchar", "short", "ushort", "int", "uint", "float", "double",
        "int8", "uint8", "int16", "uint16", "int32", "uint32", "float32", "float64",
    ];

    internal static void Read(ReadOnlySpan<byte> bytes, double unit, SurveyDraft draft)
    {
        var elements = new List<PlyElement>();
        var (format, length) = ReadHead(bytes, elements, draft);
        var (corners, faces) = (elements.Find(element => element.Name == "vertex"), elements.Find(element => element.Name == "face"));
        if (draft.IsGivenUp)
        {
            return;
        }

        if (corners is null || faces is null || !Axes.All(name => corners.Properties.Exists(one => one.Name == name && one.CountType is null)))
        {
            draft.RefuseAll("a PLY file without corners or faces", "elements \"vertex\" with x, y and z, and \"face\" with a list of vertex_indices");
            return;
        }

        draft.RefuseCount(faces.Count, corners.Count);
        var values = new PlyValues(bytes[length..], format);
        foreach (var element in elements)
        {
            ReadElement(element, ref values, unit, draft);
        }
    }

    private static (string Format, int Length) ReadHead(ReadOnlySpan<byte> bytes, List<PlyElement> elements, SurveyDraft draft)
    {
        var head = bytes[..Math.Min(bytes.Length, LongestHead)];
        var end = head.IndexOf("end_header"u8);
        var after = end < 0 ? -1 : head[end..].IndexOf((byte)'\n');
        var format = "";
        if (!head.StartsWith("ply"u8) || after < 0)
        {
            draft.RefuseAll("a PLY file without a head", "a file that begins with \"ply\" and a head that ends with \"end_header\"");
            return ("", 0);
        }

        foreach (var (line, i) in Encoding.UTF8.GetString(head[..end]).Split('\n').Select((line, i) => (line, i)))
        {
            var words = line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            format = words is ["format", var named, ..] ? named : format;
            if (!IsUnderstood(words, elements))
            {
                draft.RefuseAll(FormattableString.Invariant($"line {i + 1}: \"{string.Join(' ', words.Take(6))}\""), "element, name and count; property, type and name; property list, two types and a name");
            }
        }

        if (!Formats.Contains(format))
        {
            draft.RefuseAll($"a PLY file of format \"{format}\"", "format " + string.Join(", ", Formats));
        }

        return (format, end + after + 1);
    }

    private static bool IsUnderstood(string[] words, List<PlyElement> elements)
    {
        switch (words)
        {
            case ["element", var name, var count]:
                var isCount = long.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
                elements.Add(new PlyElement(name, number, []));
                return isCount;
            case ["property", "list", var countType, var type, var name] when elements.Count > 0:
                elements[^1].Properties.Add(new PlyProperty(name, type, countType));
                return Types.Contains(countType) && Types.Contains(type);
            case ["property", var type, var name] when elements.Count > 0:
                elements[^1].Properties.Add(new PlyProperty(name, type, null));
                return Types.Contains(type);
            default:
                return words is not ["element" or "property", ..];
        }
    }

    private static void ReadElement(PlyElement element, ref PlyValues values, double unit, SurveyDraft draft)
    {
        for (var i = 0L; i < element.Count && !draft.IsGivenUp; i++)
        {
            var place = FormattableString.Invariant($"{element.Name} {i + 1}");
            var single = new Dictionary<string, double>(StringComparer.Ordinal);
            ImmutableArray<double> corners = [];
            foreach (var property in element.Properties)
            {
                if (property.CountType is null)
                {
                    single[property.Name] = values.Take(property.Type);
                    continue;
                }

                var list = TakeList(property, ref values, place, draft);
                corners = property.Name is "vertex_indices" or "vertex_index" ? list : corners;
            }

            Add(element.Name, single, corners, place, unit, draft);
        }
    }

    private static ImmutableArray<double> TakeList(PlyProperty property, ref PlyValues values, string place, SurveyDraft draft)
    {
        var count = values.Take(property.CountType!);
        if (!(count is >= 0 and <= 1000))
        {
            draft.RefuseAll(FormattableString.Invariant($"{place}: a list of {count} values"), "lists of at most 1000 values; the file is cut off or is no PLY");
            return [];
        }

        var list = ImmutableArray.CreateBuilder<double>((int)count);
        for (var i = 0; i < count; i++)
        {
            list.Add(values.Take(property.Type));
        }

        return list.ToImmutable();
    }

    private static void Add(string element, Dictionary<string, double> single, ImmutableArray<double> corners, string place, double unit, SurveyDraft draft)
    {
        if (element == "vertex")
        {
            var corner = new Point3(single["x"], single["y"], single["z"]);
            if (!double.IsFinite(corner.X + corner.Y + corner.Z))
            {
                draft.Refuse(FormattableString.Invariant($"{place}: a corner at {corner.X}, {corner.Y}, {corner.Z}"), "three numbers; the file may be cut off");
            }

            draft.AddHub("", unit * corner, place);
        }
        else if (element == "face")
        {
            if (corners.Length < 3 || corners.Any(index => !double.IsInteger(index) || index < 0 || index >= draft.HubCount))
            {
                draft.Refuse($"{place}: corners {string.Join(' ', corners.Take(8).Select(index => index.ToString(CultureInfo.InvariantCulture)))}", FormattableString.Invariant($"three corners or more, numbered 0 to {draft.HubCount - 1}; the file may be cut off"));
                return;
            }

            draft.AddFacet([.. corners.Select(index => (int)index)], place);
        }
    }
}
