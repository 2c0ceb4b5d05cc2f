using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Faults planted into the text of a good pieces.json.</summary>
internal static class PlantedFaults
{
    /// <summary>The text with one thing changed.</summary>
    internal static string Plant(string text, Action<JsonNode> change)
    {
        var file = JsonNode.Parse(text)!;
        change(file);
        return file.ToJsonString();
    }

    internal static JsonNode Pattern(this JsonNode file, int i) => file.Patterns().ElementAt(i);

    internal static JsonNode Piece(this JsonNode file, int i) => file.Pieces().ElementAt(i);

    /// <summary>All patterns but those of patches.</summary>
    internal static IEnumerable<JsonNode> Patterns(this JsonNode file) => file["patterns"]!.AsArray().Where(pattern => (string)pattern!["kind"]! != "patch")!;

    /// <summary>All pieces but patches.</summary>
    internal static IEnumerable<JsonNode> Pieces(this JsonNode file)
    {
        var ids = file.Patterns().Select(pattern => (string)pattern["id"]!).ToHashSet(StringComparer.Ordinal);
        return file.AllPieces().Where(piece => ids.Contains((string)piece["pattern"]!));
    }

    internal static IEnumerable<JsonNode> AllPieces(this JsonNode file) => file["pieces"]!.AsArray()!;

    internal static void Remove(this JsonNode file, JsonNode piece) => file["pieces"]!.AsArray().Remove(piece);

    internal static IEnumerable<JsonNode> Runs(this JsonNode owner) => owner["runs"]!.AsArray()!;

    internal static JsonNode PieceOf(this JsonNode file, string label) => file.AllPieces().Single(piece => (string)piece["label"]! == label);

    internal static JsonNode PatternOf(this JsonNode file, JsonNode piece) => file.Patterns().Single(pattern => (string)pattern["id"]! == (string)piece["pattern"]!);

    internal static JsonNode FirstWithSkirt(this JsonNode file) => file.Patterns().First(pattern => pattern["facets"]!.AsArray().Count > 1);

    internal static void Swap(JsonNode left, JsonNode right, string field) =>
        (left[field], right[field]) = (right[field]!.DeepClone(), left[field]!.DeepClone());

    internal static void Add(JsonNode owner, string field, double step) => owner[field] = (double)owner[field]! + step;

    /// <summary>Moves every point of a pattern but those of its grain line.</summary>
    internal static void Move(JsonNode pattern, Func<FlatPoint, FlatPoint> move)
    {
        foreach (var field in (string[])["sewLine", "cutLine", "folds", "notches", "facets"])
        {
            MovePoints(pattern[field]!, move);
        }
    }

    /// <summary>A notch moved along its run, and all that is said of it.</summary>
    internal static void MoveNotch(JsonNode pattern, int notch, double step)
    {
        var mark = pattern["notches"]![notch]!;
        var run = pattern["runs"]![(int)mark["run"]!]!;
        var (from, to) = (PointOf(pattern["sewLine"]![(int)run["from"]!]!), PointOf(pattern["sewLine"]![(int)run["to"]!]!));
        var along = (step / from.DistanceTo(to)) * (to - from);
        Add(mark, "atMm", step);
        MovePoints(mark["onSewLine"]!, point => point + along);
        MovePoints(mark["outer"]!, point => point + along);
        MovePoints(mark["inner"]!, point => point + along);
    }

    /// <summary>Two seams exchange their partners, and all four edges say so: only the lengths and places can tell.</summary>
    internal static void ExchangePartners(JsonNode file, JsonNode run, JsonNode otherRun)
    {
        var (back, otherBack) = (Beyond(file, run), Beyond(file, otherRun));
        Swap(run, otherRun, "partner");
        Swap(back, otherBack, "partner");
        back["arc"] = (string)otherRun["arc"]!;
        otherBack["arc"] = (string)run["arc"]!;
    }

    internal static JsonNode Beyond(JsonNode file, JsonNode run) =>
        file.PieceOf((string)run["partner"]!["piece"]!)["runs"]![(int)run["partner"]!["run"]!]!;

    internal static IEnumerable<JsonNode> Seams(JsonNode owner) => owner.Runs().Where(run => (string)run["role"]! == "seam");

    private static FlatPoint PointOf(JsonNode point) => new((double)point[0]!, (double)point[1]!);

    /// <summary>Moves every point in a part of the file.</summary>
    internal static void MoveAll(JsonNode part, Func<FlatPoint, FlatPoint> move) => MovePoints(part, move);

    /// <summary>Moves every point in a part of the file by one step.</summary>
    internal static void MoveAll(JsonNode part, FlatPoint step) => MovePoints(part, point => point + step);

    private static void MovePoints(JsonNode node, Func<FlatPoint, FlatPoint> move)
    {
        if (node is JsonArray { Count: 2 } point && point.All(part => part is JsonValue))
        {
            var moved = move(PointOf(point));
            (point[0], point[1]) = (moved.X, moved.Y);
            return;
        }

        var parts = node is JsonArray list ? list : node is JsonObject fields ? fields.Select(field => field.Value) : [];
        foreach (var part in parts.OfType<JsonNode>().ToArray())
        {
            MovePoints(part, move);
        }
    }
}
