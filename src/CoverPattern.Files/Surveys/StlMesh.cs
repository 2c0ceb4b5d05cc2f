using System;
using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Surveys;

/// <summary>Reads the triangles of an STL file, binary or as text; what it says of normals is passed over.</summary>
internal static class StlMesh
{
    private const int HeadBytes = 84;
    private const int TriangleBytes = 50;

    internal static void Read(ReadOnlySpan<byte> bytes, double unit, SurveyDraft draft)
    {
        var count = bytes.Length >= HeadBytes ? BinaryPrimitives.ReadUInt32LittleEndian(bytes[(HeadBytes - 4)..]) : 0;
        if (bytes.Length == HeadBytes + (TriangleBytes * (long)count))
        {
            draft.RefuseCount(count, 0);
            ReadBinary(bytes, (int)Math.Min(count, int.MaxValue), unit, draft);
        }
        else if (bytes.TrimStart(" \t\r\n"u8).StartsWith("solid"u8))
        {
            ReadText(Encoding.UTF8.GetString(bytes), unit, draft);
        }
        else
        {
            draft.RefuseAll(
                FormattableString.Invariant($"an STL file of {bytes.Length} bytes that says {count} triangles"),
                FormattableString.Invariant($"{HeadBytes} bytes and {TriangleBytes} for each triangle, or a text that begins with \"solid\"; the file is cut off or is no STL"));
        }
    }

    private static void ReadBinary(ReadOnlySpan<byte> bytes, int count, double unit, SurveyDraft draft)
    {
        for (var triangle = 0; triangle < count && !draft.IsGivenUp; triangle++)
        {
            var at = bytes[(HeadBytes + (TriangleBytes * triangle) + 12)..];
            var place = FormattableString.Invariant($"triangle {triangle + 1}");
            for (var corner = 0; corner < 3; corner++)
            {
                var own = at[(12 * corner)..];
                AddCorner(
                    new Point3(BinaryPrimitives.ReadSingleLittleEndian(own), BinaryPrimitives.ReadSingleLittleEndian(own[4..]), BinaryPrimitives.ReadSingleLittleEndian(own[8..])),
                    place,
                    unit,
                    draft);
            }

            AddTriangle(place, draft);
        }
    }

    private static void ReadText(string text, double unit, SurveyDraft draft)
    {
        var (number, corners) = (0, 0);
        foreach (var span in text.AsSpan().EnumerateLines())
        {
            number++;
            var line = span.Trim();
            if (draft.IsGivenUp)
            {
                return;
            }

            if (!line.StartsWith("vertex", StringComparison.Ordinal))
            {
                continue;
            }

            var place = FormattableString.Invariant($"line {number}");
            var words = line.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            AddCorner(new Point3(Value(words, 1), Value(words, 2), Value(words, 3)), place, unit, draft);
            if (++corners % 3 == 0)
            {
                AddTriangle(place, draft);
            }
        }

        if (corners == 0 || corners % 3 != 0)
        {
            draft.Refuse(FormattableString.Invariant($"an STL text with {corners} corners"), "three lines \"vertex x y z\" for each triangle; the file is cut off or is no STL");
        }
    }

    private static double Value(string[] words, int index) =>
        index < words.Length && double.TryParse(words[index], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN;

    private static void AddCorner(Point3 corner, string place, double unit, SurveyDraft draft)
    {
        if (!double.IsFinite(corner.X + corner.Y + corner.Z))
        {
            draft.Refuse(FormattableString.Invariant($"{place}: a corner at {corner.X}, {corner.Y}, {corner.Z}"), "three numbers");
        }

        draft.AddHub("", unit * corner, place);
    }

    private static void AddTriangle(string place, SurveyDraft draft) =>
        draft.AddFacet([draft.HubCount - 3, draft.HubCount - 2, draft.HubCount - 1], place);
}
