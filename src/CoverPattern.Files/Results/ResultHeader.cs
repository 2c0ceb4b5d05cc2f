using System;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CoverPattern.Files.Results;

/// <summary>The first fields of every result file that other programs may read.</summary>
internal static class ResultHeader
{
    /// <summary>Raised by one whenever a field changes its meaning.</summary>
    public const int FormatVersion = 1;

    private const string Units = "mm";

    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    /// <summary>A file that has its header and nothing more yet.</summary>
    /// <param name="view">Sentence that says how drawings and coordinates are to be looked at.</param>
    public static JsonObject Begin(string view) => new()
    {
        ["formatVersion"] = FormatVersion,
        ["units"] = Units,
        ["view"] = view,
    };

    /// <summary>Reads a file that has the header and some further fields.</summary>
    /// <param name="file">The file in UTF-8.</param>
    /// <param name="names">Names of the further fields.</param>
    /// <param name="read">What reads the file's place once the header has been found right.</param>
    /// <exception cref="ResultFormatException">The file is no JSON, of another version or in other units.</exception>
    public static T Read<T>(ReadOnlySpan<byte> file, ReadOnlySpan<string> names, Func<JsonPlace, T> read)
    {
        using var document = Parse(file);
        var place = Checked(document);
        place.AllowOnly(["formatVersion", "units", "view", .. names]);
        return read(place);
    }

    /// <summary>Reads a file that has the header, without minding what else is in it.</summary>
    /// <param name="file">The file in UTF-8.</param>
    /// <param name="read">What reads the file's place once the header has been found right.</param>
    /// <exception cref="ResultFormatException">The file is no JSON, of another version or in other units.</exception>
    public static T ReadLeniently<T>(ReadOnlySpan<byte> file, Func<JsonPlace, T> read)
    {
        using var document = Parse(file);
        return read(Checked(document));
    }

    private static JsonPlace Checked(JsonDocument document)
    {
        var place = new JsonPlace(document.RootElement, "");
        var version = place.Field("formatVersion");
        var found = version.Whole(0, int.MaxValue);
        if (found != FormatVersion)
        {
            var wayOut = found > FormatVersion ? "a newer program made this result: use that one, or make the result again" : "make the result again";
            throw version.Fault($"this program reads version {FormatVersion}, not {version.Element.GetRawText()}; {wayOut}.");
        }

        var units = place.Field("units");
        if (units.Text() != Units)
        {
            throw units.Fault($"must be \"{Units}\", not \"{units.Text()}\".");
        }

        _ = place.Field("view").Text();
        return place;
    }

    private static JsonDocument Parse(ReadOnlySpan<byte> file)
    {
        try
        {
            return JsonDocument.Parse(file.ToArray(), Strict);
        }
        catch (JsonException fault)
        {
            var place = $"line {fault.LineNumber + 1}, column {fault.BytePositionInLine + 1}";
            throw new ResultFormatException(place, "this is not JSON, or a field stands twice.", fault);
        }
    }
}
