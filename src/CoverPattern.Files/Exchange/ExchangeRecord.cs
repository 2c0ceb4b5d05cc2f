using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace CoverPattern.Files.Exchange;

/// <summary>One thing of a DXF file: everything from one group code 0 to the next.</summary>
/// <param name="Section">Name of the section it stands in.</param>
/// <param name="Kind">Value of its group code 0.</param>
/// <param name="Line">Line of that value, from 1.</param>
/// <param name="Tags">Its further group codes and values, with their lines.</param>
internal sealed record ExchangeRecord(string Section, string Kind, int Line, List<(int Code, string Value, int Line)> Tags)
{
    // A style of a hundred pieces has a few megabytes; own choices against files made to do harm.
    internal const int LargestBytes = 32 << 20;
    private const int LongestLine = 2_048;
    private const int MostTags = 3_000_000;

    private static readonly byte[] BinaryBegin = Encoding.ASCII.GetBytes("AutoCAD Binary DXF");

    internal string Layer => First(8);

    /// <summary>The first value under a code; empty when there is none.</summary>
    internal string First(int code) => Tags.FirstOrDefault(tag => tag.Code == code).Value ?? string.Empty;

    /// <summary>Takes a file apart; of sections other than HEADER, BLOCKS and ENTITIES nothing is kept.</summary>
    /// <returns>The records, and what is wrong with the file as a whole; null when nothing is.</returns>
    internal static (List<ExchangeRecord> Records, ExchangeFault? Fault) Read(ReadOnlySpan<byte> file)
    {
        var records = new List<ExchangeRecord>();
        if (file.Length > LargestBytes)
        {
            return (records, Wrong(1, $"the file has {file.Length} bytes; at most {LargestBytes} are read. Save fewer pieces at once."));
        }

        if (file.StartsWith(BinaryBegin))
        {
            return (records, Wrong(1, "this is binary DXF; only DXF in text form is read. Save it as ASCII DXF, release 12."));
        }

        return (records, Fill(records, file));
    }

    private static ExchangeFault? Fill(List<ExchangeRecord> records, ReadOnlySpan<byte> file)
    {
        var (at, line, section, count) = (0, 0, string.Empty, 0);
        ExchangeRecord? record = null;
        while (at < file.Length && !(record is { Kind: "EOF" }))
        {
            var code = Next(file, ref at, ref line);
            if (code is null || !int.TryParse(code, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
            {
                return code is { } blank && blank.Trim().Length == 0 && at >= file.Length ? Ended(record, line) : Wrong(line, "this is not DXF in text form: a group code, a whole number, must stand here. Save the pieces as ASCII DXF.");
            }

            if (Next(file, ref at, ref line) is not { } value)
            {
                return Wrong(line, $"a line is longer than {LongestLine} letters, or the file breaks off after a group code.");
            }

            if (++count > MostTags)
            {
                return Wrong(line, $"the file has more than {MostTags} group codes. Save fewer pieces at once.");
            }

            if (number != 0)
            {
                record?.Tags.Add((number, value.Trim(), line));
                continue;
            }

            section = record is { Kind: "SECTION" } ? record.First(2).ToUpperInvariant() : record is { Kind: "ENDSEC" } ? string.Empty : section;
            record = new ExchangeRecord(section, value.Trim().ToUpperInvariant(), line, []);
            if (section is "HEADER" or "BLOCKS" or "ENTITIES" || record.Kind == "SECTION")
            {
                records.Add(record);
            }
        }

        return Ended(record, line);
    }

    private static ExchangeFault? Ended(ExchangeRecord? record, int line) => record is { Kind: "EOF" }
        ? null
        : Wrong(Math.Max(1, line), "the file breaks off: it does not end with EOF. Save or copy it again.");

    private static ExchangeFault Wrong(int line, string message) => new(string.Empty, string.Empty, Math.Max(1, line), message);

    /// <summary>The next line without its end; null when it is too long or there is none.</summary>
    private static string? Next(ReadOnlySpan<byte> file, ref int at, ref int line)
    {
        line++;
        if (at >= file.Length)
        {
            return null;
        }

        var rest = file[at..Math.Min(file.Length, at + LongestLine + 1)];
        var length = rest.IndexOf((byte)'\n');
        if (length < 0 && at + rest.Length < file.Length)
        {
            return null;
        }

        length = length < 0 ? rest.Length : length;
        at += length + 1;
        return Encoding.Latin1.GetString(rest[..length]).TrimEnd('\r');
    }
}
