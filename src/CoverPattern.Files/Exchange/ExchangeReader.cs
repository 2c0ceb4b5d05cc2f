using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Files.Exchange;

/// <summary>Reads pieces drawn elsewhere from a pattern exchange file [ASTM D6673], and from plain DXF that has its blocks and layers.</summary>
/// <remarks>What the standard allows is read; anything else on a layer that matters is a fault with block, layer and line, never guessed at.</remarks>
public static class ExchangeReader
{
    private const int MostBlocks = 2_000;
    private const double Inch = 25.4;

    /// <summary>Reads a file.</summary>
    /// <param name="file">Its bytes, of whatever kind.</param>
    public static ExchangeReading Read(ReadOnlySpan<byte> file)
    {
        var (records, broken) = ExchangeRecord.Read(file);
        if (broken is not null)
        {
            return new ExchangeReading(null, [broken], []);
        }

        var faults = new ExchangeFaults();
        var texts = Texts(records);
        if (Scale(texts, records) is not { } scale)
        {
            faults.Add(new ExchangeFault(string.Empty, string.Empty, 1, "the file does not say its units. Add the text \"Units: METRIC\" or \"Units: ENGLISH\" to its style, or save it with units in the header."));
            return new ExchangeReading(null, faults.All, []);
        }

        faults.Scale = scale;
        var notes = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var pieces = Blocks(records, faults).Select(block => ExchangeBlock.Read(block, faults, notes)).ToArray();
        CheckSheet(records, faults, pieces.Length);
        ImmutableArray<string> said = [.. notes.Select(note => FormattableString.Invariant($"{note.Key}: {note.Value} left aside."))];
        return faults.IsEmpty
            ? new ExchangeReading(new ExchangeStyle(texts.GetValueOrDefault("STYLE NAME", string.Empty), texts.GetValueOrDefault("CREATION DATE", string.Empty), [.. pieces.Select(piece => piece!)]), [], said)
            : new ExchangeReading(null, faults.All, said);
    }

    /// <summary>Texts of the form "Identifier: value", by identifier in capitals.</summary>
    internal static KeyValuePair<string, string>? Text(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 ? KeyValuePair.Create(text[..colon].Trim().ToUpperInvariant(), text[(colon + 1)..].Trim()) : null;
    }

    private static Dictionary<string, string> Texts(List<ExchangeRecord> records)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var text in records.Where(record => record is { Section: "ENTITIES", Kind: "TEXT" }).Select(record => Text(record.First(1))))
        {
            if (text is { } said)
            {
                texts.TryAdd(said.Key, said.Value);
            }
        }

        return texts;
    }

    /// <summary>Millimetres in a unit: as the style says, else the header; null when neither does.</summary>
    private static double? Scale(Dictionary<string, string> texts, List<ExchangeRecord> records)
    {
        var header = records.Where(record => record.Section == "HEADER" || record.Kind == "SECTION").SelectMany(record => record.Tags).ToList();
        var units = header.FindIndex(tag => tag is { Code: 9, Value: "$INSUNITS" });
        return texts.GetValueOrDefault("UNITS", string.Empty).ToUpperInvariant() switch
        {
            "METRIC" => 1,
            "ENGLISH" => Inch,
            // Codes of the header variable, from memory: 1 inch, 4 millimetre, 5 centimetre, 6 metre.
            _ => units < 0 || units + 1 >= header.Count ? null : header[units + 1].Value switch
            {
                "1" => Inch,
                "4" => 1,
                "5" => 10,
                "6" => 1000,
                _ => null,
            },
        };
    }

    private static IEnumerable<List<ExchangeRecord>> Blocks(List<ExchangeRecord> records, ExchangeFaults faults)
    {
        List<ExchangeRecord>? block = null;
        var count = 0;
        foreach (var record in records.Where(record => record.Section == "BLOCKS"))
        {
            if (record.Kind == "BLOCK")
            {
                if (++count > MostBlocks)
                {
                    faults.Add(string.Empty, record, $"there are more than {MostBlocks} blocks. Save fewer pieces at once.");
                    yield break;
                }

                block = [record];
            }
            else if (record.Kind == "ENDBLK" && block is not null)
            {
                // Names with an asterisk are the drawing's own spaces.
                if (!block[0].First(2).StartsWith('*'))
                {
                    yield return block;
                }

                block = null;
            }
            else
            {
                block?.Add(record);
            }
        }

        if (block is not null)
        {
            faults.Add(block[0].First(2), block[0], "the block does not end.");
        }
    }

    /// <summary>Insertions must leave pieces in their true size.</summary>
    private static void CheckSheet(List<ExchangeRecord> records, ExchangeFaults faults, int blocks)
    {
        foreach (var insert in records.Where(record => record is { Section: "ENTITIES", Kind: "INSERT" }))
        {
            foreach (var tag in insert.Tags.Where(tag => tag.Code is 41 or 42 && !(double.TryParse(tag.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var factor) && factor == 1)))
            {
                faults.Add(new ExchangeFault(insert.First(2), insert.Layer, tag.Line, $"the block is inserted scaled by {tag.Value}. Insert it in true size, and say turned-over pieces in its quantity."));
            }
        }

        if (blocks == 0)
        {
            faults.Add(new ExchangeFault(string.Empty, string.Empty, 1, "there is no block, so no piece. Make each piece a block, its boundary a closed POLYLINE on layer 1."));
        }
    }
}
