using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text.Json;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Readers for the kinds of value in a job file.</summary>
internal static class Values
{
    private const int FirstYear = 2000;
    private const int LastYear = 2099;

    private delegate bool QuantityParser(string text, out double value, out string trouble);

    internal static bool Whole(JobKey key, JsonElement element, out int value, out string hint)
    {
        hint = "";
        var allowed = Number(element) is { } number && double.IsInteger(number) && number >= key.Least && number <= key.Most;
        value = allowed ? (int)Number(element)!.Value : (int)key.Least;
        return allowed;
    }

    internal static bool Length(JobKey key, JsonElement element, out Measure value, out string hint)
    {
        var allowed = Quantity(key, element, ParseLength, out var millimetres, out hint);
        value = allowed ? new Measure(millimetres, Typed(element, millimetres)) : default;
        return allowed;
    }

    internal static bool SignedLength(JobKey key, JsonElement element, out Measure value, out string hint)
    {
        var allowed = Quantity(key, element, ParseSignedLength, out var millimetres, out hint);
        value = allowed ? new Measure(millimetres, Typed(element, millimetres)) : default;
        return allowed;
    }

    /// <summary>Labels, each once; whether such things exist, later stages tell.</summary>
    internal static bool Labels(JobKey key, JsonElement element, out ImmutableArray<string> value, out string hint)
    {
        (value, hint) = ([], "");
        if (element.ValueKind != JsonValueKind.Array || element.EnumerateArray().Any(item => item.ValueKind != JsonValueKind.String))
        {
            return false;
        }

        value = [.. element.EnumerateArray().Select(item => item.GetString()!)];
        hint = value.Distinct(StringComparer.Ordinal).Count() < value.Length ? "one of these stands twice" : "";
        return hint.Length == 0 && value.Length >= key.Least && value.Length <= key.Most;
    }

    /// <summary>Rows from the deck up; null for "rest".</summary>
    internal static bool Rows(JobKey key, JsonElement element, out RowRange? value, out string hint)
    {
        (value, hint) = (null, "");
        var text = Text(element) ?? (Number(element) is { } number ? number.ToString(CultureInfo.InvariantCulture) : "");
        if (text == "rest")
        {
            return true;
        }

        var ends = text.Split('-');
        var rows = ends.Select(end => int.TryParse(end, NumberStyles.None, CultureInfo.InvariantCulture, out var row) && end[0] != '0' ? row : 0).ToArray();
        hint = rows.Length == 2 && rows[0] > rows[1] ? "the lower row first" : "";
        value = new RowRange(rows[0], rows[^1]);
        return rows.Length <= 2 && rows.All(row => row >= 1 && row <= key.Most) && hint.Length == 0;
    }

    internal static bool Ratio(JobKey key, JsonElement element, out double value, out string hint) =>
        Quantity(key, element, RatioParser.TryParse, out value, out hint);

    internal static bool Mass(JobKey key, JsonElement element, out double value, out string hint) =>
        Quantity(key, element, MassParser.TryParse, out value, out hint);

    /// <summary>One line of words; line ends and other control characters would spoil papers and drawings.</summary>
    internal static bool Line(JobKey key, JsonElement element, out string? value, out string hint)
    {
        value = Text(element);
        hint = value is not null && value.Any(IsUnprintable) ? "line ends and other control characters are not allowed" : "";
        return value is not null && hint.Length == 0 && value.Length <= key.Most;
    }

    internal static bool ClothName(JobKey key, JsonElement element, out string? value, out string hint)
    {
        (value, hint) = (Text(element), "");
        return value is not null && value.Length <= key.Most && ClothNames.IsSafe(value);
    }

    /// <summary>A word of a list; the enum's names are the words with a capital.</summary>
    internal static bool Word<T>(JobKey key, JsonElement element, out T value, out string hint)
        where T : struct, Enum
    {
        var allowed = Word(key, element, out string? word, out hint);
        value = allowed ? Enum.Parse<T>(word!, ignoreCase: true) : default;
        return allowed;
    }

    internal static bool Word(JobKey key, JsonElement element, out string? value, out string hint)
    {
        value = Text(element);
        var near = value is null ? null : NearWords.Nearest(value, key.Words);
        hint = near is null ? "" : $"did you mean \"{near}\"?";
        return value is not null && key.Words.Contains(value, StringComparer.Ordinal);
    }

    internal static bool Flag(JobKey key, JsonElement element, out bool value, out string hint)
    {
        (value, hint) = (element.ValueKind == JsonValueKind.True, "");
        return element.ValueKind is JsonValueKind.True or JsonValueKind.False;
    }

    internal static bool Day(JobKey key, JsonElement element, out DateOnly value, out string hint)
    {
        hint = "";
        return DateOnly.TryParseExact(Text(element), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            && value.Year is >= FirstYear and <= LastYear;
    }

    private static bool Quantity(JobKey key, JsonElement element, QuantityParser parse, out double value, out string hint)
    {
        hint = "";
        value = Number(element) ?? double.NaN;
        if (Text(element) is { } text && !parse(text, out value, out hint))
        {
            return false;
        }

        // Adding 0 turns -0 into 0, which no paper should show as "-0".
        value += 0.0;
        return value >= key.Least && value <= key.Most;
    }

    private static bool ParseLength(string text, out double value, out string trouble) =>
        LengthParser.TryParse(text, signed: false, out value, out trouble);

    private static bool ParseSignedLength(string text, out double value, out string trouble) =>
        LengthParser.TryParse(text, signed: true, out value, out trouble);

    /// <summary>The words as typed; a bare number gets its unit, so that it reads the same on paper.</summary>
    private static string Typed(JsonElement element, double millimetres) =>
        Text(element)?.Trim(' ') ?? FormattableString.Invariant($"{millimetres:0.#########} mm");

    private static double? Number(JsonElement element) => element.ValueKind == JsonValueKind.Number ? element.GetDouble() : null;

    private static string? Text(JsonElement element) => element.ValueKind == JsonValueKind.String ? element.GetString() : null;

    private static bool IsUnprintable(char c) => char.GetUnicodeCategory(c)
        is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
