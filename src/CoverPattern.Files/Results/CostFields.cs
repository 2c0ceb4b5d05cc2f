using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Lays.Estimates;
using static CoverPattern.Files.Results.SummaryFile;

namespace CoverPattern.Files.Results;

/// <summary>What is to be bought and what it costs, in summary.json.</summary>
internal static class CostFields
{
    internal static JsonArray Buying(Estimate estimate) => new([.. estimate.Buying.Select(cloth => (JsonNode)new JsonObject
    {
        ["cloth"] = cloth.Cloth,
        ["rollWidthMm"] = Round(cloth.RollWidthMm),
        ["laysMm"] = Round(cloth.LaysMm),
        ["spareMm"] = Round(cloth.SpareMm),
    })]);

    internal static JsonArray Notions(ImmutableArray<NotionEstimate> notions) => new([.. notions.Select(notion => (JsonNode)new JsonObject
    {
        ["what"] = notion.What,
        ["makeUp"] = notion.MakeUp,
        ["separating"] = notion.IsSeparating,
        ["count"] = notion.Count,
        ["lengthMm"] = Round(notion.LengthMm),
        ["widthMm"] = Round(notion.WidthMm),
        ["buyMm"] = Round(notion.BuyMm),
        ["sizes"] = new JsonArray([.. notion.Sizes.Select(size => (JsonNode)new JsonObject { ["lengthMm"] = Round(size.LengthMm), ["count"] = size.Count })]),
        ["stops"] = notion.Stops,
    })]);

    internal static JsonObject Cost(Cost cost) => new()
    {
        ["currency"] = cost.Currency,
        ["lines"] = new JsonArray([.. cost.Lines.Select(line => (JsonNode)new JsonObject
        {
            ["what"] = line.What,
            ["quantity"] = Round(line.Quantity),
            ["unit"] = line.Unit,
            ["each"] = Priced(line.Each),
            ["minutes"] = Priced(line.Minutes),
            ["amount"] = Priced(line.Amount),
        })]),
        ["minutes"] = Priced(cost.Minutes),
        ["total"] = Priced(cost.Total),
        ["missing"] = new JsonArray([.. cost.Missing.Select(word => (JsonNode)word)]),
    };

    private static JsonNode? Priced(double? value) => value is { } known ? Round(known) : null;
}
