using System;
using System.Buffers;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>From the bytes of a job file to its JSON; hostile bytes end in a fault.</summary>
internal static class JobText
{
    internal const int MostBytes = 4 * 1024 * 1024;
    private const int MostDepth = 16;
    private const string Allowed = "JSON in UTF-8; comments with // or /* */ and trailing commas are allowed";

    private static readonly JsonDocumentOptions Options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = MostDepth,
    };

    /// <summary>Reads the JSON; null when it is broken, and then one fault at least is noted.</summary>
    internal static JsonDocument? Parse(ReadOnlySpan<byte> bytes, List<Fault> faults)
    {
        if (bytes.Length > MostBytes)
        {
            faults.Add(new Fault("", FormattableString.Invariant($"a file of {bytes.Length} bytes"), "a job file has at most 4 MB"));
            return null;
        }

        var text = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        if (FirstBadByte(text) is { } bad)
        {
            faults.Add(Broken(text, bad, "this byte is not UTF-8"));
            return null;
        }

        return ParseText(text, faults);
    }

    private static JsonDocument? ParseText(ReadOnlySpan<byte> text, List<Fault> faults)
    {
        try
        {
            var document = JsonDocument.Parse(text.ToArray(), Options);
            CheckStrings(document.RootElement, "", faults);
            if (faults.Count == 0)
            {
                return document;
            }

            document.Dispose();
        }
        catch (JsonException broken)
        {
            var line = LineStart(text, broken.LineNumber ?? 0);
            var at = (int)Math.Min(line + (broken.BytePositionInLine ?? 0), text.Length);
            faults.Add(Broken(text, at, broken.Message.Split(" LineNumber: ", StringSplitOptions.None)[0]));
        }

        return null;
    }

    private static int? FirstBadByte(ReadOnlySpan<byte> text)
    {
        for (var at = 0; at < text.Length;)
        {
            if (Rune.DecodeFromUtf8(text[at..], out _, out var length) != OperationStatus.Done)
            {
                return at;
            }

            at += length;
        }

        return null;
    }

    private static int LineStart(ReadOnlySpan<byte> text, long line)
    {
        var start = 0;
        for (; line > 0 && text[start..].IndexOf((byte)'\n') is >= 0 and var length; line--)
        {
            start += length + 1;
        }

        return start;
    }

    /// <summary>Says line and column, both counted from 1, columns in characters.</summary>
    private static Fault Broken(ReadOnlySpan<byte> text, int at, string why)
    {
        var before = text[..at];
        var line = before.Count((byte)'\n') + 1;
        var start = before.LastIndexOf((byte)'\n') + 1;
        var column = Encoding.UTF8.GetString(before[start..]).EnumerateRunes().Count() + 1;
        return new Fault("", FormattableString.Invariant($"broken JSON at line {line}, column {column}: {why}"), Allowed);
    }

    /// <summary>An escape such as \ud800 alone is half a character: JSON lets it pass, no text can hold it.</summary>
    private static void CheckStrings(JsonElement element, string place, List<Fault> faults)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.String when !IsText(element.GetString):
                faults.Add(new Fault(place, JobNotes.Said(element), "words without halves of characters (\\ud800 to \\udfff alone)"));
                break;
            case JsonValueKind.Array:
                foreach (var (index, item) in element.EnumerateArray().Index())
                {
                    CheckStrings(item, FormattableString.Invariant($"{place}[{index}]"), faults);
                }

                break;
            case JsonValueKind.Object:
                CheckMembers(element, place, faults);
                break;
        }
    }

    private static void CheckMembers(JsonElement section, string place, List<Fault> faults)
    {
        foreach (var member in section.EnumerateObject())
        {
            if (IsText(() => member.Name))
            {
                CheckStrings(member.Value, JobNotes.Join(place, member.Name), faults);
            }
            else
            {
                faults.Add(new Fault(place, "a key with half a character", "keys of " + JobKeys.Listing("")));
            }
        }
    }

    private static bool IsText(Func<string?> read)
    {
        try
        {
            return read() is not null;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
