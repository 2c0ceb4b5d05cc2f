using System;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using CsCheck;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class RandomJobTests
{
    /// <summary>Ways to break one thing of a right job, and the place where the fault must stand.</summary>
    private static readonly ImmutableArray<(string Place, Action<JsonObject> Break)> Breakages =
    [
        ("schemaVersion", job => job["schemaVersion"] = 2),
        ("schemaVersion", job => job.Remove("schemaVersion")),
        ("date", job => job["date"] = "2026-13-01"),
        ("date", job => job.Remove("date")),
        ("covers", job => job["covers"] = 1001),
        ("title", job => job["title"] = true),
        ("frame", job => job.Remove("frame")),
        ("frame", job => job["frame"] = "dome"),
        ("frame.family", job => job["frame"]!["family"] = "cube"),
        ("frame.frequency", job => job["frame"]!["frequency"] = 0),
        ("frame.cut", job => job["frame"]!["cut"] = 24),
        ("frame.cut", job => job["frame"]!["cut"] = "7/11"),
        ("frame.cut", job => job["frame"]!.AsObject().Remove("cut")),
        ("frame.size", job => job["frame"]!["size"] = new JsonObject()),
        ("frame.size", job => job["frame"]!["size"] = new JsonObject { ["radius"] = 2000, ["height"] = 2000 }),
        ("frame.size.radius", job => job["frame"]!["size"] = new JsonObject { ["radius"] = "61 m" }),
        ("frame.size.floorDiameter", job => job["frame"]!["size"] = new JsonObject { ["floorDiameter"] = "4 metres" }),
        ("frame.sise", job => job["frame"]!["sise"] = 1),
        ("standOff.padding", job => job["standOff"] = new JsonObject { ["padding"] = -1 }),
        ("standOff.hubHeight", job => job["standOff"] = new JsonObject { ["hubHeight"] = "1 500 mm" }),
        ("ease", job => job["ease"] = 0.051),
        ("ease", job => job["ease"] = new JsonArray(0.003)),
        ("skirt.shape", job => job["skirt"] = new JsonObject { ["shape"] = "sloping" }),
        ("deck.datum", job => job["deck"] = new JsonObject { ["datum"] = "lowest hub" }),
        ("deck.plinth", job => job["deck"] = new JsonObject { ["plinth"] = -1 }),
        ("deck.heights", job => job["deck"] = new JsonObject { ["heights"] = new JsonObject() }),
        ("deck.heights[\"H0.1\"]", job => job["deck"] = new JsonObject { ["heights"] = new JsonObject { ["H0.1"] = "a little" } }),
        ("deck.ground", job => job["deck"] = new JsonObject { ["ground"] = new JsonArray(1) }),
        ("deck.fall", job => job["deck"] = new JsonObject { ["fall"] = "2 in 100", ["towards"] = 0 }),
        ("deck.towards", job => job["deck"] = new JsonObject { ["fall"] = "2 %" }),
        ("deck.towards", job => job["deck"] = new JsonObject { ["fall"] = 0, ["towards"] = 361 }),
        ("skirt.drop", job => job["skirt"] = new JsonObject { ["drop"] = "2 m" }),
        ("hem.turnUnder", job => job["hem"] = new JsonObject { ["depth"] = 5, ["turnUnder"] = 6 }),
        ("hem.depth", job => job["hem"] = new JsonObject { ["depth"] = "deep" }),
        ("seam.makeUp", job => job["seam"] = new JsonObject { ["makeUp"] = "Plain" }),
        ("seam.width", job => job["seam"] = new JsonObject { ["width"] = 0.5 }),
        ("cloths", job => job["cloths"] = new JsonArray()),
        ("cloths[0].name", job => job["cloths"]![0]!["name"] = "käse"),
        ("cloths[0].rollWidth", job => job["cloths"]![0]!["rollWidth"] = 99),
        ("cloths[0].rollWidth", job => (job["cloths"]![0]!["rollWidth"], job["cloths"]![0]!["selvedge"]) = ("190 mm", 100)),
        ("cloths[0].mass", job => job["cloths"]![0]!["mass"] = "610 g"),
        ("cloths[0].nap", job => job["cloths"]![0]!["nap"] = "twoWay"),
        ("cloths[0].face", job => job["cloths"]![0]!["face"] = JsonValue.Create(false)),
        ("cloths[0].colour", job => job["cloths"]![0]!["colour"] = "green"),
        ("lay.turns", job => job["lay"] = new JsonObject { ["turns"] = 180 }),
        ("lay.effort", job => job["lay"] = new JsonObject { ["effort"] = 0 }),
        ("lay.seed", job => job["lay"] = new JsonObject { ["seed"] = 0.5 }),
        ("confirmed[0]", job => job["confirmed"] = new JsonArray("cloths[3].nap")),
        ("seams", job => job["seams"] = new JsonObject()),
    ];

    [Fact]
    public void Read_RightJob_HasNoFaultAndEachOpenPlaceIsAssumed() => RandomJobs.Right.Sample(json =>
    {
        var reading = JobReader.Read(json.ToJsonString());

        Assert.Empty(reading.Faults);
        Assert.Equal(!json.ContainsKey("ease"), reading.Job!.Assumed.Any(assumption => assumption.Place == "ease"));
        Assert.Equal(!json.ContainsKey("hem"), reading.Job.Assumed.Any(assumption => assumption.Place == "hem.depth"));
        Assert.Equal(json["cloths"]!.AsArray().Count, reading.Job.Assumed.Count(assumption => assumption.Place.EndsWith(".selvedge", StringComparison.Ordinal)));
    });

    [Fact]
    public void Read_OneThingBroken_HasOneFaultThere() =>
        Gen.Select(RandomJobs.Right, Gen.Int[0, Breakages.Length - 1]).Sample(
            (json, which) =>
            {
                var broken = json.DeepClone().AsObject();
                Breakages[which].Break(broken);

                var reading = JobReader.Read(broken.ToJsonString());

                var fault = Assert.Single(reading.Faults);
                Assert.Equal(Breakages[which].Place, fault.Place);
                Assert.Null(reading.Job);
            },
            iter: 2000);

    // Commas for decimals, other minus signs, capitals that fold unlike: none may reach the reading.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    [InlineData("sv-SE")]
    [InlineData("fa-IR")]
    [InlineData("ar-SA")]
    public void Read_AnyCulture_GivesTheSame(string culture)
    {
        var texts = SampleJobs.FileNames().Select(SampleJobs.Text).ToArray();
        var wrong = """{ "schemaVersion": 1.5, "ease": -0.6, "title": 1, "seam": { "makeUp": "PLAIN", "wIdth": -1.5 }, "frame": { "frequency": 3, "cut": "1/2" } }""";
        var expected = texts.Append(wrong).Select(Show).ToArray();
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            Assert.Equal(expected, texts.Append(wrong).Select(Show));
            Assert.Equal(JobSchema.Write(), Invariantly(JobSchema.Write));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Read_RandomBytes_NeverThrows() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Assert.NotEmpty(JobReader.Read(bytes).Faults), iter: 20_000);

    [Fact]
    public void Read_RandomJsonSigns_NeverThrows() =>
        Gen.OneOf("{", "}", "[", "]", ",", ":", "\"", "\\u", "d800", "1e9", "-", "null", "true", "//", "/*", "*/", "\n", "\"frame\":", "\"size\":", "\"cloths\":", "\"cut\":")
            .Array[0, 30]
            .Sample(parts => Assert.NotEmpty(JobReader.Read(string.Concat(parts)).Faults), iter: 20_000);

    [Fact]
    public void Read_SampleWithDamagedBytes_NeverThrows()
    {
        var sample = Encoding.UTF8.GetBytes(SampleJobs.Text("garden-2v.json"));
        Gen.Select(Gen.Int[0, sample.Length - 1], Gen.Byte).Array[1, 4].Sample(
            damages =>
            {
                var bytes = (byte[])sample.Clone();
                foreach (var (at, value) in damages)
                {
                    bytes[at] = value;
                }

                var reading = JobReader.Read(bytes);

                Assert.Equal(reading.Job is null, reading.Faults.Length > 0);
            },
            iter: 5000);
    }

    private static string Show(string json)
    {
        var reading = JobReader.Read(json);
        return string.Join('\n', reading.Faults) + JsonSerializer.Serialize(reading.Job);
    }

    private static string Invariantly(Func<string> write)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        return write();
    }
}
