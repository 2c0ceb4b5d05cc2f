using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Patterns.Frames;
using CsCheck;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>Random jobs that are right: any frame, any key stated or left out.</summary>
internal static class RandomJobs
{
    // Within the limits of every length of a job but the roll's width.
    private static readonly Gen<JsonNode> Small = Gen.OneOf(
        Gen.Double[12, 50].Select(value => (JsonNode)value),
        Gen.Int[12, 50].Select(value => (JsonNode)$"{value} mm"),
        Gen.Int[2, 4].Select(value => (JsonNode)$"{value},5 cm"),
        Gen.Int[1, 15].Select(value => (JsonNode)$"1 {value}/16 in"));

    private static readonly Gen<JsonNode> Roll = Gen.OneOf(
        Gen.Int[500, 6000].Select(value => (JsonNode)value),
        Gen.Int[2, 19].Select(value => (JsonNode)$"{value}' 6\""),
        Gen.Int[50, 600].Select(value => (JsonNode)$"{value} cm"));

    private static readonly Gen<JsonObject> Frame = Gen.Int[1, 8].SelectMany(frequency => Gen.Select(
        Gen.Int[1, CutNames.MostRows(frequency)],
        Gen.Bool,
        Gen.OneOf("radius", "diameter"),
        Gen.Int[400, 60_000],
        (rows, named, measure, size) => new JsonObject
        {
            ["frequency"] = frequency,
            ["cut"] = named ? CutNames.Of(frequency, rows).Name : rows,
            ["size"] = new JsonObject { [measure] = size.ToString(CultureInfo.InvariantCulture) + " mm" },
        }));

    private static readonly Gen<JsonObject> Options = Gen.Select(
        Small.Array[9], Gen.OneOf("plain", "lapped", "felled", "welded"), Gen.Int[-50, 50], Gen.Int[1, 1000], Gen.Bool, (lengths, makeUp, ease, whole, flag) => new JsonObject
        {
            ["title"] = "order " + whole.ToString(CultureInfo.InvariantCulture),
            ["covers"] = whole,
            ["standOff"] = new JsonObject { ["tubeRadius"] = lengths[0], ["hubHeight"] = lengths[1], ["padding"] = lengths[2] },
            ["ease"] = flag ? ease / 1000.0 : string.Create(CultureInfo.InvariantCulture, $"{ease / 10.0} %"),
            ["skirt"] = new JsonObject { ["drop"] = lengths[3] },
            ["hem"] = new JsonObject { ["depth"] = lengths[4], ["turnUnder"] = "1/4 in" },
            ["seam"] = new JsonObject { ["makeUp"] = makeUp, ["width"] = lengths[5] },
            ["lay"] = new JsonObject
            {
                ["spacing"] = lengths[6],
                ["endAllowance"] = lengths[7],
                ["turns"] = flag ? "grain" : "free",
                ["faceDown"] = flag,
                ["effort"] = whole,
                ["seed"] = whole,
            },
            ["confirmed"] = new JsonArray("ease", "cloths[0].nap"),
        });

    private static readonly Gen<JsonArray> Cloths = Gen.Select(Roll, Small, Gen.OneOf("none", "oneWay"), Gen.OneOf("oneSided", "reversible"), (roll, strip, nap, face) => new JsonObject
    {
        ["name"] = "cloth",
        ["rollWidth"] = roll,
        ["safetyStrip"] = strip,
        ["mass"] = "18 oz/yd2",
        ["nap"] = nap,
        ["face"] = face,
    }).Array[1, 3].Select(cloths => new JsonArray([.. cloths.Select((cloth, index) =>
    {
        cloth["name"] = string.Create(CultureInfo.InvariantCulture, $"cloth {index}");
        return (JsonNode)cloth;
    })]));

    /// <summary>Jobs that are right.</summary>
    internal static readonly Gen<JsonObject> Right = Gen.Select(Frame, Options, Cloths, Gen.Int[0, 511], (frame, options, cloths, kept) =>
    {
        var job = new JsonObject { ["schemaVersion"] = 1, ["date"] = "2026-03-01", ["frame"] = frame, ["cloths"] = cloths };
        foreach (var (option, index) in options.Select((option, index) => (option, index)).ToArray())
        {
            if ((kept >> index) % 2 == 1)
            {
                job[option.Key] = option.Value!.DeepClone();
            }
        }

        return job;
    });
}
