using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>One thing of a DXF file: everything from one group code 0 to the next.</summary>
/// <param name="Section">Name of the section it stands in; empty outside.</param>
/// <param name="Kind">Value of its group code 0.</param>
/// <param name="Tags">Its further group codes and values.</param>
internal sealed record DxfRecord(string Section, string Kind, ImmutableArray<(int Code, string Value)> Tags)
{
    public string Handle => First(Kind == "DIMSTYLE" ? 105 : 5);

    public string Owner => First(330);

    public string Name => First(2);

    /// <summary>The first value under a code; empty when there is none.</summary>
    public string First(int code) => Tags.FirstOrDefault(tag => tag.Code == code).Value ?? "";

    public IEnumerable<string> All(int code) => Tags.Where(tag => tag.Code == code).Select(tag => tag.Value);

    public override string ToString() => $"{Kind} {Name} ({Section}, handle {Handle})";

    /// <summary>Takes a DXF text apart.</summary>
    /// <exception cref="FormatException">A group code is no number.</exception>
    public static ImmutableArray<DxfRecord> Read(string text)
    {
        var lines = text.Split('\n');
        var records = ImmutableArray.CreateBuilder<DxfRecord>();
        var section = "";
        for (var i = 0; i + 1 < lines.Length;)
        {
            var kind = lines[i + 1];
            var tags = new List<(int, string)>();
            for (i += 2; i + 1 < lines.Length && lines[i].Trim() != "0"; i += 2)
            {
                tags.Add((int.Parse(lines[i], CultureInfo.InvariantCulture), lines[i + 1]));
            }

            var record = new DxfRecord(section, kind, [.. tags]);
            section = kind switch { "SECTION" => record.Name, "ENDSEC" => "", _ => section };
            records.Add(record);
        }

        return records.ToImmutable();
    }
}
