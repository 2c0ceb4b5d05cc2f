using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Results;

/// <summary>A value in a JSON file together with where it stands, so that a fault can name its place.</summary>
/// <param name="Element">The value.</param>
/// <param name="Path">Where it stands, such as "patterns[3].runs"; empty for the whole file.</param>
internal readonly record struct JsonPlace(JsonElement Element, string Path)
{
    // A thousand kilometres: far over any cloth, and the grid still holds it.
    private const double Farthest = 1e9;

    public JsonPlace Field(string name)
    {
        Demand(JsonValueKind.Object, "an object");
        return Element.TryGetProperty(name, out var value)
            ? new JsonPlace(value, Path.Length == 0 ? name : $"{Path}.{name}")
            : throw Fault($"the field \"{name}\" is missing.");
    }

    public bool Has(string name) => Element.ValueKind == JsonValueKind.Object && Element.TryGetProperty(name, out _);

    /// <summary>Refuses a field that is not among those allowed: a misspelt one would be lost in silence.</summary>
    public void AllowOnly(params ReadOnlySpan<string> names)
    {
        Demand(JsonValueKind.Object, "an object");
        foreach (var field in Element.EnumerateObject())
        {
            if (!names.Contains(field.Name))
            {
                throw Fault($"the field \"{field.Name}\" is unknown.");
            }
        }
    }

    public string Text()
    {
        Demand(JsonValueKind.String, "a text");
        return Element.GetString() ?? "";
    }

    /// <summary>A text of at least one letter.</summary>
    public string Name() => Text() is { Length: > 0 } name ? name : throw Fault("a name must have at least one letter.");

    public bool Flag() => Element.ValueKind is JsonValueKind.True or JsonValueKind.False
        ? Element.GetBoolean()
        : throw Fault($"must be true or false, not {Found()}.");

    public double Number()
    {
        Demand(JsonValueKind.Number, "a number");
        return Element.TryGetDouble(out var number) && Math.Abs(number) <= Farthest ? number : throw Fault(double.IsFinite(number) ? FormattableString.Invariant($"must be a number within {Farthest:0} of 0.") : "must be a finite number.");
    }

    /// <summary>A length that cannot be negative.</summary>
    public double Length() => Number() is >= 0 and var length ? length : throw Fault("must not be negative.");

    /// <summary>A whole number from <paramref name="least"/> up to and without <paramref name="limit"/>.</summary>
    public int Whole(int least, int limit)
    {
        Demand(JsonValueKind.Number, "a number");
        return Element.TryGetInt32(out var number) && number >= least && number < limit
            ? number
            : throw Fault($"must be a whole number from {least} to {limit - 1}, not {Element.GetRawText()}.");
    }

    /// <summary>A word of an enumeration, written with a small first letter.</summary>
    public T Word<T>()
        where T : struct, Enum
    {
        var text = Text();
        foreach (var value in Enum.GetValues<T>())
        {
            if (JsonWords.Of(value) == text)
            {
                return value;
            }
        }

        throw Fault($"must be one of {string.Join(", ", Enum.GetValues<T>().Select(JsonWords.Of))}, not \"{text}\".");
    }

    public ImmutableArray<T> Items<T>(Func<JsonPlace, T> read)
    {
        Demand(JsonValueKind.Array, "a list");
        var path = Path;
        return [.. Element.EnumerateArray().Select((item, index) => read(new JsonPlace(item, $"{path}[{index}]")))];
    }

    public Point2 Point()
    {
        var numbers = Items(item => item.Number());
        return numbers.Length == 2 ? new Point2(numbers[0], numbers[1]) : throw Fault("must be a point [x, y].");
    }

    /// <summary>At least three points.</summary>
    public ImmutableArray<Point2> Ring()
    {
        var ring = Items(item => item.Point());
        return ring.Length >= 3 ? ring : throw Fault("a ring must have at least three points.");
    }

    public ResultFormatException Fault(string message) => new(Path.Length == 0 ? "file" : Path, message);

    private void Demand(JsonValueKind kind, string wanted)
    {
        if (Element.ValueKind != kind)
        {
            throw Fault($"must be {wanted}, not {Found()}.");
        }
    }

    private string Found() => Element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
