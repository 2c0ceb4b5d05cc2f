using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CoverPattern.Files.Jobs;

/// <summary>Writes the form of job files as a JSON Schema, for editors that check while one types.</summary>
/// <remarks>
/// Drawn from the same list of keys as the reader, so that both know the same. A schema sees forms and the limits of bare
/// numbers; the reader alone checks limits of lengths in words, cuts against frequency, sums, repeated keys and names.
/// </remarks>
public static class JobSchema
{
    private const string Dialect = "https://json-schema.org/draft/2020-12/schema";
    private const string CutPattern = "^[0-9]{1,4}/[0-9]{1,4}$";
    private const string DayPattern = "^20[0-9]{2}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])$";
    private const string RowsPattern = "^(?:[1-9][0-9]?(?:-[1-9][0-9]?)?|rest)$";
    private const int MostRows = 35;

    // Quotes and inch signs stay readable: the schema is a file of its own, never part of a page.
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema, indented, ending with a line end; the same bytes each time.</summary>
    public static string Write()
    {
        var schema = new JsonObject { ["$schema"] = Dialect, ["title"] = "CoverPattern job" };
        foreach (var (name, node) in SectionOf("").ToArray())
        {
            schema[name] = node?.DeepClone();
        }

        return schema.ToJsonString(Readable) + "\n";
    }

    private static JsonObject SectionOf(string place)
    {
        var keys = JobKeys.In(place);
        var section = new JsonObject
        {
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["properties"] = new JsonObject(keys.Select(key => new KeyValuePair<string, JsonNode?>(key.Name, Described(key)))),
        };
        var required = keys.Where(key => key.IsRequired).ToImmutableArray();
        var instead = keys.Where(key => key.IsAlternative).ToImmutableArray();
        if (required.Length > 0 && instead.IsEmpty)
        {
            section["required"] = Names(required);
        }
        else if (required.Length > 0)
        {
            section["anyOf"] = new JsonArray([new JsonObject { ["required"] = Names(required) }, .. instead.Select(key => new JsonObject { ["required"] = Names([.. required.Where(other => !key.InPlaceOf.Contains(other.Name)), key]) })]);
        }

        if (string.Equals(place, JobKeys.Size, StringComparison.Ordinal))
        {
            section["minProperties"] = 1;
            section["maxProperties"] = 1;
        }

        return section;
    }

    private static JsonArray Names(ImmutableArray<JobKey> keys) => new([.. keys.Select(key => (JsonNode)key.Name)]);

    private static JsonObject Described(JobKey key)
    {
        var node = Form(key);
        var standing = key.IsAssumable ? $" Default: {key.Default} ({key.Standing})." : "";
        node["description"] = $"{key.Meaning}{standing} Allowed: {key.Allowed}.";
        return node;
    }

    private static JsonObject Form(JobKey key) => key.Kind switch
    {
        KeyKind.Section => SectionOf(key.Place),
        KeyKind.Sections => new() { ["type"] = "array", ["minItems"] = (int)key.Least, ["maxItems"] = (int)key.Most, ["items"] = SectionOf(key.Place + "[]") },
        KeyKind.Places => new() { ["type"] = "array", ["maxItems"] = (int)key.Most, ["uniqueItems"] = true, ["items"] = new JsonObject { ["enum"] = Places() } },
        KeyKind.Whole => new() { ["type"] = "integer", ["minimum"] = (int)key.Least, ["maximum"] = (int)key.Most },
        KeyKind.Length => Quantity(key, LengthParser.Pattern),
        KeyKind.SignedLength => Quantity(key, LengthParser.SignedPattern),
        KeyKind.Rows => new() { ["type"] = new JsonArray("integer", "string"), ["minimum"] = 1, ["maximum"] = (int)key.Most, ["pattern"] = RowsPattern },
        KeyKind.Labels => Labels(key),
        KeyKind.Ratio => Quantity(key, RatioParser.Pattern),
        KeyKind.HubLengths => new() { ["type"] = "object", ["minProperties"] = 1, ["additionalProperties"] = Quantity(key, LengthParser.SignedPattern) },
        KeyKind.Fall => Quantity(key, FallParser.Pattern),
        KeyKind.Degrees => new() { ["type"] = "number", ["minimum"] = key.Least, ["maximum"] = key.Most },
        KeyKind.Mass => Quantity(key, MassParser.Pattern),
        KeyKind.Line => new() { ["type"] = "string", ["maxLength"] = (int)key.Most, ["pattern"] = "^[^\\u0000-\\u001f\\u007f-\\u009f\\u2028\\u2029]*$" },
        KeyKind.ClothName => new() { ["type"] = "string", ["maxLength"] = (int)key.Most, ["pattern"] = ClothNames.Pattern },
        KeyKind.Word => new() { ["enum"] = new JsonArray([.. key.Words.Select(word => (JsonNode)word)]) },
        KeyKind.MakeUpName => new() { ["type"] = "string", ["maxLength"] = (int)key.Most, ["pattern"] = ClothNames.Pattern },
        KeyKind.Names => Names(key),
        KeyKind.Seams => new() { ["anyOf"] = new JsonArray(new JsonObject { ["enum"] = new JsonArray([.. key.Words.Select(word => (JsonNode)word)]) }, Names(key)) },
        KeyKind.Amount => new() { ["type"] = "number", ["minimum"] = key.Least, ["maximum"] = key.Most },
        KeyKind.Flag => new() { ["type"] = "boolean" },
        KeyKind.Day => new() { ["type"] = "string", ["pattern"] = DayPattern },
        KeyKind.FileName => new() { ["type"] = "string", ["pattern"] = SurveySection.NamePattern },
        KeyKind.ExchangeFile => new() { ["type"] = "string", ["pattern"] = OutsideReader.NamePattern },
        KeyKind.LaysFile => new() { ["type"] = "string", ["pattern"] = LayReader.NamePattern },
        KeyKind.Lines => new() { ["type"] = "array", ["minItems"] = (int)key.Least, ["maxItems"] = (int)key.Most, ["items"] = new JsonObject { ["type"] = "string", ["maxLength"] = 200 } },
        KeyKind.PieceName => new() { ["type"] = "string", ["maxLength"] = (int)key.Most, ["pattern"] = PieceNames.Pattern },
        KeyKind.Cut => new() { ["type"] = new JsonArray("integer", "string", "array"), ["minimum"] = 1, ["maximum"] = MostRows, ["pattern"] = CutPattern, ["minItems"] = 3, ["items"] = new JsonObject { ["type"] = "string" } },
        _ => throw new InvalidOperationException($"Key {key.Place} has no form."),
    };

    private static JsonObject Labels(JobKey key) => new()
    {
        ["type"] = "array",
        ["minItems"] = (int)key.Least,
        ["maxItems"] = (int)key.Most,
        ["uniqueItems"] = true,
        ["items"] = new JsonObject { ["type"] = "string" },
    };

    private static JsonObject Names(JobKey key) =>
        new() { ["type"] = "array", ["minItems"] = (int)key.Least, ["maxItems"] = (int)key.Most, ["items"] = new JsonObject { ["type"] = "string" } };

    /// <summary>Limits bind bare numbers, the pattern binds words: a keyword looks at its own type alone.</summary>
    private static JsonObject Quantity(JobKey key, string pattern) => new()
    {
        ["type"] = new JsonArray("number", "string"),
        ["minimum"] = key.Least,
        ["maximum"] = key.Most,
        ["pattern"] = pattern,
        ["maxLength"] = LengthParser.LongestText,
    };

    /// <summary>Places that may be confirmed, for as many cloths and windows as a job may have.</summary>
    private static JsonArray Places() => new([.. JobKeys.Confirmable((int)JobKeys.Find("cloths")!.Most, (int)JobKeys.Find("windows")!.Most, (int)JobKeys.Find("openings")!.Most, (int)JobKeys.Find("pipes")!.Most).Select(place => (JsonNode)place)]);
}
