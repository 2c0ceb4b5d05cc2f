using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Results;

/// <summary>How our small nouns are written in JSON.</summary>
internal static class JsonWords
{
    /// <summary>A word of an enumeration with a small first letter.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    // Adding zero turns a negative zero into zero: both are the same place.
    public static JsonNode Of(double number) => JsonValue.Create(number + 0.0);

    public static JsonArray Of(Point2 point) => [Of(point.X), Of(point.Y)];

    public static JsonArray Of(IEnumerable<Point2> ring) => List(ring, Of);

    public static JsonArray List<T>(IEnumerable<T> items, Func<T, JsonNode> write) => [.. items.Select(write)];
}
