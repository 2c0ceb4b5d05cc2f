using System;
using System.Linq;
using System.Text.Json.Nodes;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Takes the text of pieces.json apart into cover and liner: whatever a liner's label begins with is taken off.</summary>
internal static class TwoShells
{
    internal static string Cover(string text) => Part(text, isLiner: false);

    internal static string Liner(string text) => Part(text, isLiner: true);

    private static string Part(string text, bool isLiner)
    {
        var file = JsonNode.Parse(text)!;
        foreach (var (list, field) in new[] { ("patterns", "id"), ("pieces", "label") })
        {
            var array = file[list]!.AsArray();
            foreach (var other in array.Where(item => IsOfLiner((string)item![field]!) != isLiner).ToArray())
            {
                array.Remove(other);
            }
        }

        if (isLiner)
        {
            Array.ForEach([.. file["patterns"]!.AsArray()], pattern => Strip(pattern!, "id"));
            foreach (var piece in file["pieces"]!.AsArray())
            {
                Array.ForEach(["label", "pattern"], field => Strip(piece!, field));
                piece!["facets"] = new JsonArray([.. piece["facets"]!.AsArray().Select(facet => (JsonNode)Stripped((string)facet!))]);
                foreach (var run in piece["runs"]!.AsArray())
                {
                    Strip(run!, "arc");
                    if (run!["partner"] is { } partner)
                    {
                        Strip(partner, "piece");
                    }
                }
            }
        }

        return file.ToJsonString();
    }

    private static bool IsOfLiner(string label) => label[label.LastIndexOf(' ') + 1] == 'I';

    private static void Strip(JsonNode owner, string field) => owner[field] = Stripped((string)owner[field]!);

    private static string Stripped(string label)
    {
        var at = label.LastIndexOf(' ') + 1;
        return label[at] == 'I' ? label.Remove(at, 1) : throw new InvalidOperationException($"{label} is not named as the liner's.");
    }
}
