using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>Holds a DXF file to the rules by which its parts must agree. Knows nothing of the writer.</summary>
internal static class DxfStructure
{
    private static readonly string[] Sections = ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"];

    private static readonly string[] Tables = ["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"];

    private static readonly Dictionary<string, string> Subclasses = new(StringComparer.Ordinal)
    {
        ["LINE"] = "AcDbLine",
        ["LWPOLYLINE"] = "AcDbPolyline",
        ["TEXT"] = "AcDbText",
        ["INSERT"] = "AcDbBlockReference",
        ["BLOCK"] = "AcDbBlockBegin",
        ["ENDBLK"] = "AcDbBlockEnd",
    };

    /// <summary>Every broken rule as a sentence; none when the file is sound.</summary>
    public static ImmutableArray<string> Faults(string text)
    {
        var records = DxfRecord.Read(text);
        return
        [
            .. Order(text, records), .. Handles(records), .. TableOwners(records), .. BlockOwners(records),
            .. ObjectOwners(records), .. Pointers(records), .. Names(records), .. Counts(records), .. Markers(records),
        ];
    }

    private static IEnumerable<string> Order(string text, ImmutableArray<DxfRecord> records)
    {
        var sections = records.Where(r => r.Kind == "SECTION").Select(r => r.Name);
        if (!sections.SequenceEqual(Sections))
        {
            yield return "The sections are not those of AC1015 in their order.";
        }

        if (!records.Where(r => r.Kind == "TABLE").Select(r => r.Name).SequenceEqual(Tables))
        {
            yield return "The tables are not those of AC1015 in their order.";
        }

        if (records.Count(r => r.Kind == "SECTION") != records.Count(r => r.Kind == "ENDSEC")
            || records.Count(r => r.Kind == "TABLE") != records.Count(r => r.Kind == "ENDTAB") || records[^1].Kind != "EOF")
        {
            yield return "A section or table does not end.";
        }

        if (text.Any(letter => letter is (< ' ' or > '~') and not '\n'))
        {
            yield return "A sign is not printable ASCII.";
        }
    }

    private static IEnumerable<string> Handles(ImmutableArray<DxfRecord> records)
    {
        var header = records.First(r => r.Name == "HEADER");
        var seed = header.Tags.SkipWhile(tag => tag.Value != "$HANDSEED").Skip(1).Select(tag => Number(tag.Value)).FirstOrDefault();
        var withHandle = records.Where(NeedsHandle).ToArray();
        foreach (var record in withHandle.Where(r => r.Handle.Length == 0 || r.Handle == "0" || Number(r.Handle) >= seed))
        {
            yield return $"{record} has no handle below the seed {seed:X}.";
        }

        foreach (var twice in withHandle.GroupBy(r => r.Handle).Where(group => group.Count() > 1))
        {
            yield return $"The handle {twice.Key} stands {twice.Count()} times.";
        }
    }

    private static bool NeedsHandle(DxfRecord record) => record.Kind is not ("SECTION" or "ENDSEC" or "ENDTAB" or "EOF");

    private static long Number(string handle) => long.Parse(handle, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static IEnumerable<string> TableOwners(ImmutableArray<DxfRecord> records)
    {
        DxfRecord? table = null;
        foreach (var record in records.Where(r => r.Section == "TABLES" && NeedsHandle(r)))
        {
            table = record.Kind == "TABLE" ? record : table;
            var owner = record.Kind == "TABLE" ? "0" : table?.Handle;
            if (record.Owner != owner || (record.Kind != "TABLE" && record.Kind != table?.Name))
            {
                yield return $"{record} is not owned by its table.";
            }
        }
    }

    /// <summary>Whatever stands in a block belongs to the block's record; whatever stands in ENTITIES to the model space.</summary>
    private static IEnumerable<string> BlockOwners(ImmutableArray<DxfRecord> records)
    {
        var byName = records.Where(r => r.Kind == "BLOCK_RECORD").ToLookup(r => r.Name, r => r.Handle);
        var owner = "";
        foreach (var record in records.Where(r => r.Section is "BLOCKS" or "ENTITIES" && NeedsHandle(r)))
        {
            var name = record.Section == "ENTITIES" ? "*Model_Space" : record.Name;
            owner = record.Kind == "BLOCK" || record.Section == "ENTITIES" ? byName[name].FirstOrDefault("none") : owner;
            if (record.Owner != owner)
            {
                yield return $"{record} is not owned by its block record.";
            }
        }
    }

    private static IEnumerable<string> ObjectOwners(ImmutableArray<DxfRecord> records)
    {
        var objects = records.Where(r => r.Section == "OBJECTS" && NeedsHandle(r)).ToArray();
        foreach (var record in objects.Skip(1))
        {
            var owner = objects.FirstOrDefault(other => other.Handle == record.Owner);
            if (owner is null || !owner.All(350).Contains(record.Handle))
            {
                yield return $"{record} is not listed by the dictionary that owns it.";
            }
        }

        if (objects.Length == 0 || objects[0].Kind != "DICTIONARY" || objects[0].Owner != "0")
        {
            yield return "The objects do not begin with the root dictionary.";
        }
    }

    private static IEnumerable<string> Pointers(ImmutableArray<DxfRecord> records)
    {
        var handles = records.Where(NeedsHandle).Select(r => r.Handle).Append("0").ToHashSet(StringComparer.Ordinal);
        return records.SelectMany(r => r.Tags.Where(tag => tag.Code is 330 or 340 or 350 or 390 && !handles.Contains(tag.Value))
            .Select(tag => $"{r} points to {tag.Value}, which is not there."));
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

            if (known.Count != Entries(records, table).Count())
            {
                yield return $"A name stands twice in the table {table}.";
            }
        }

        var blocks = records.Where(r => r.Kind == "BLOCK").Select(r => r.Name).ToArray();
        if (!blocks.Order(StringComparer.Ordinal).SequenceEqual(Entries(records, "BLOCK_RECORD").Select(r => r.Name).Order(StringComparer.Ordinal))
            || blocks.Distinct(StringComparer.OrdinalIgnoreCase).Count() != blocks.Length)
        {
            yield return "Blocks and block records are not the same, each once.";
        }

        foreach (var insert in records.Where(r => r.Kind == "INSERT" && !blocks.Contains(r.Name)))
        {
            yield return $"{insert} inserts a block that is not there.";
        }
    }

    private static IEnumerable<DxfRecord> Entries(ImmutableArray<DxfRecord> records, string table) =>
        records.Where(r => r.Section == "TABLES" && r.Kind == table);

    private static IEnumerable<string> Counts(ImmutableArray<DxfRecord> records)
    {
        var tables = records.Where(r => r.Kind == "TABLE").Where(r => Count(r.First(70)) != Entries(records, r.Name).Count());
        var polylines = records.Where(r => r.Kind == "LWPOLYLINE").Where(r => Count(r.First(90)) != r.All(10).Count() || r.All(10).Count() != r.All(20).Count());
        var lineTypes = Entries(records, "LTYPE").Where(r => Count(r.First(73)) != r.All(49).Count());
        return tables.Concat(polylines).Concat(lineTypes).Select(r => $"{r} does not have as many parts as it says.");
    }

    private static int Count(string text) => int.TryParse(text, CultureInfo.InvariantCulture, out var number) ? number : -1;

    private static IEnumerable<string> Markers(ImmutableArray<DxfRecord> records)
    {
        foreach (var record in records.Where(r => r.Section is "BLOCKS" or "ENTITIES" && NeedsHandle(r)))
        {
            var markers = record.All(100).Distinct().ToArray();
            if (!markers.SequenceEqual(["AcDbEntity", Subclasses.GetValueOrDefault(record.Kind, "unknown")]))
            {
                yield return $"{record} has not the subclass markers of its kind.";
            }
        }
    }
}
