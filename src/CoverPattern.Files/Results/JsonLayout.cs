using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CoverPattern.Files.Results;

/// <summary>Writes JSON as people like to read it: what fits on one line stands on one line, the rest is indented by two.</summary>
/// <remarks>
/// The same bytes on any machine: UTF-8 without mark, "\n" line ends, fields in the order given, numbers in the shortest
/// form that reads back as the same number.
/// </remarks>
public static class JsonLayout
{
    // Columns of a wide editor window.
    private const int LineWidth = 140;

    private static readonly JsonSerializerOptions Letters = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <param name="node">What is written.</param>
    /// <returns>The text in UTF-8, a line end at its end.</returns>
    /// <exception cref="ArgumentException">A number is not finite.</exception>
    public static byte[] Write(JsonNode node)
    {
        var text = new StringBuilder();
        Append(text, node, depth: 0);
        return Encoding.UTF8.GetBytes(text.Append('\n').ToString());
    }

    private static void Append(StringBuilder text, JsonNode? node, int depth)
    {
        if (TryAppendLine(text, node, text.Length + LineWidth - (2 * depth)))
        {
            return;
        }

        if (node is null or JsonValue)
        {
            text.Append(Scalar(node));
            return;
        }

        if (node is JsonArray array)
        {
            AppendItems(text, '[', array.Count, depth, i => Append(text, array[i], depth + 1));
            text.Append(']');
            return;
        }

        var fields = node.AsObject().ToArray();
        AppendItems(text, '{', fields.Length, depth, i =>
        {
            text.Append(Quoted(fields[i].Key)).Append(": ");
            Append(text, fields[i].Value, depth + 1);
        });
        text.Append('}');
    }

    private static void AppendItems(StringBuilder text, char open, int count, int depth, Action<int> append)
    {
        text.Append(open);
        for (var i = 0; i < count; i++)
        {
            text.Append(i == 0 ? "\n" : ",\n").Append(' ', 2 * (depth + 1));
            append(i);
        }

        text.Append('\n').Append(' ', 2 * depth);
    }

    /// <summary>Adds the whole node without line ends, or nothing when the text would grow beyond a length.</summary>
    /// <remarks>It stops at the limit, so that the work grows with the length of the file and not with its depth as well.</remarks>
    private static bool TryAppendLine(StringBuilder text, JsonNode? node, int limit)
    {
        var start = text.Length;
        var fits = node switch
        {
            JsonArray array => TryAppendAll(text, ('[', ']'), array, limit, item => TryAppendLine(text, item, limit)),
            JsonObject fields => TryAppendAll(text, ('{', '}'), fields, limit, field =>
            {
                text.Append(Quoted(field.Key)).Append(": ");
                return TryAppendLine(text, field.Value, limit);
            }),
            _ => text.Append(Scalar(node)).Length <= limit,
        };
        text.Length = fits ? text.Length : start;
        return fits;
    }

    private static bool TryAppendAll<T>(StringBuilder text, (char Open, char Close) signs, IEnumerable<T> items, int limit, Func<T, bool> append)
    {
        text.Append(signs.Open);
        var first = true;
        foreach (var item in items)
        {
            text.Append(first ? "" : ", ");
            first = false;
            if (!append(item))
            {
                return false;
            }
        }

        return text.Append(signs.Close).Length <= limit;
    }

    private static string Scalar(JsonNode? node) => node?.ToJsonString(Letters) ?? "null";

    private static string Quoted(string text) => JsonSerializer.Serialize(text, Letters);
}
