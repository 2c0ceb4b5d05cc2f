using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>Rules of a DXF file of release 12, written without looking at the writer: what a strict reader would stumble over.</summary>
internal static class DxfRelease12Structure
{
    private static readonly string[] Sections = ["HEADER", "TABLES", "BLOCKS", "ENTITIES"];

    private static readonly string[] Entities = ["LINE", "POLYLINE", "VERTEX", "SEQEND", "POINT", "TEXT", "INSERT", "BLOCK", "ENDBLK"];

    /// <summary>Every broken rule as a sentence; none when the file is sound.</summary>
    public static ImmutableArray<string> Faults(string text)
    {
        var records = DxfRecord.Read(text);
        return [.. Order(text, records), .. NewerThings(records), .. Polylines(records), .. Names(records), .. Counts(records)];
    }

    private static IEnumerable<string> Order(string text, ImmutableArray<DxfRecord> records)
    {
        if (!records.Where(r => r.Kind == "SECTION").Select(r => r.Name).SequenceEqual(Sections) || records[^1].Kind != "EOF")
        {
            yield return "The sections are not those of release 12 in their order.";
        }

        if (!text.Contains("$ACADVER\n  1\nAC1009\n", StringComparison.Ordinal))
        {
            yield return "The header does not say AC1009.";
        }

        if (text.Any(letter => letter is (< ' ' or > '~') and not '\n'))
        {
            yield return "A sign is not printable ASCII.";
        }
    }

    /// <summary>Handles, owners and subclass markers came later, and so did some entities.</summary>
    private static IEnumerable<string> NewerThings(ImmutableArray<DxfRecord> records)
    {
        foreach (var record in records.Where(r => r.Section is "BLOCKS" or "ENTITIES" or "TABLES"))
        {
            if (record.Tags.Any(tag => tag.Code is 5 or 100 or 105 or 330 or 370 or 390))
            {
                yield return $"{record} has a field that is newer than release 12.";
            }

            if (record.Section is "BLOCKS" or "ENTITIES" && record.Kind is not ("SECTION" or "ENDSEC") && !Entities.Contains(record.Kind))
            {
                yield return $"{record} is newer than release 12.";
            }
        }
    }

    private static IEnumerable<string> Polylines(ImmutableArray<DxfRecord> records)
    {
        DxfRecord? open = null;
        foreach (var record in records)
        {
            switch (record.Kind)
            {
                case "POLYLINE":
                    if (open is not null || record.First(66) != "1")
                    {
                        yield return $"{record} does not announce its corners, or begins inside another.";
                    }

                    open = record;
                    break;
                case "VERTEX":
                    if (open is null || record.First(8) != open.First(8))
                    {
                        yield return $"{record} is a corner of no line on its layer.";
                    }

                    break;
                case "SEQEND":
                    open = null;
                    break;
                default:
                    if (open is not null)
                    {
                        yield return $"{open} does not end.";
                        open = null;
                    }

                    break;
            }
        }
    }

    private static IEnumerable<string> Names(ImmutableArray<DxfRecord> records)
    {
        foreach (var (code, table) in new[] { (8, "LAYER"), (6, "LTYPE"), (7, "STYLE") })
        {
            var known = Entries(records, table).Select(r => r.Name).ToHashSet(StringComparer.Ordinal);
            var users = records.Where(r => r.Section is "BLOCKS" or "ENTITIES" || (r.Kind == "LAYER" && code == 6));
            foreach (var user in users.Where(r => r.All(code).Any(name => !known.Contains(name))))
            {
                yield return $"{user} names something that is not in the table {table}.";
            }
        }

        var blocks = records.Where(r => r.Kind == "BLOCK").Select(r => r.Name).ToArray();
        if (blocks.Distinct(StringComparer.Ordinal).Count() != blocks.Length || blocks.Any(name => name.Length is 0 or > 31 || !name.All(IsAllowed)))
        {
            yield return "A block's name stands twice or is not one of release 12.";
        }

        foreach (var insert in records.Where(r => r.Kind == "INSERT" && !blocks.Contains(r.Name)))
        {
            yield return $"{insert} inserts a block that is not there.";
        }
    }

    private static bool IsAllowed(char letter) => char.IsAsciiLetterUpper(letter) || char.IsAsciiDigit(letter) || letter is '$' or '-' or '_';

    private static IEnumerable<string> Counts(ImmutableArray<DxfRecord> records) =>
        records.Where(r => r.Kind == "TABLE" && r.First(70) != Entries(records, r.Name).Count().ToString(System.Globalization.CultureInfo.InvariantCulture))
            .Select(r => $"{r} does not have as many parts as it says.")
            .Concat(records.Count(r => r.Kind == "BLOCK") == records.Count(r => r.Kind == "ENDBLK") ? [] : ["A block does not end."]);

    private static IEnumerable<DxfRecord> Entries(ImmutableArray<DxfRecord> records, string table) =>
        records.Where(r => r.Section == "TABLES" && r.Kind == table);
}
