using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using Json.Schema;

namespace CoverPattern.Files.Tests.Jobs;

public sealed class JobSchemaTests
{
    private static readonly JsonDocumentOptions WithComments = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Write());

    [Fact]
    public void Write_Twice_GivesTheSameText()
    {
        var text = JobSchema.Write();

        Assert.Equal(text, JobSchema.Write());
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_Schema_IsValidByItsOwnDialect()
    {
        var evaluation = MetaSchemas.Draft202012.Evaluate(Element(JobSchema.Write()));

        Assert.True(evaluation.IsValid);
    }

    [Theory]
    [MemberData(nameof(SampleJobs.Names), MemberType = typeof(SampleJobs))]
    public void Write_Sample_IsAccepted(string name) => Assert.True(Accepts(SampleJobs.Text(name)));

    [Fact]
    public void Write_RandomRightJobs_AreAccepted() =>
        RandomJobs.Right.Sample(job => Assert.True(Accepts(job.ToJsonString())));

    // What both must refuse: forms and limits of bare numbers.
    [Theory]
    [InlineData("/schemaVersion", "2")]
    [InlineData("/date", "\"1.3.2026\"")]
    [InlineData("/covers", "0")]
    [InlineData("/covers", "1.5")]
    [InlineData("/title", "1")]
    [InlineData("/title", "\"a\\nb\"")]
    [InlineData("/titel", "\"a\"")]
    [InlineData("/ease", "0.06")]
    [InlineData("/ease", "\"0.3\"")]
    [InlineData("/frame/frequency", "13")]
    [InlineData("/frame/cut", "36")]
    [InlineData("/frame/cut", "\"most\"")]
    [InlineData("/frame/family", "\"cube\"")]
    [InlineData("/frame/size", "{}")]
    [InlineData("/frame/size/radius", "1000")]
    [InlineData("/frame/size/diameter", "399")]
    [InlineData("/frame/size/diameter", "\"5000\"")]
    [InlineData("/frame/size/diameter", "\"-5 m\"")]
    [InlineData("/seam", "{ \"makeUp\": \"glued/taped\" }")]
    [InlineData("/seam", "{ \"makeUp\": 1 }")]
    [InlineData("/seam", "{ \"others\": [{ \"between\": \"gores\", \"makeUp\": \"plain\" }] }")]
    [InlineData("/seam", "{ \"others\": [{ \"between\": [] , \"makeUp\": \"plain\" }] }")]
    [InlineData("/seam", "{ \"closing\": true }")]
    [InlineData("/seam", "{ \"closing\": { \"to\": -1 } }")]
    [InlineData("/makeUps", "[]")]
    [InlineData("/makeUps", "[{ \"name\": \"a\", \"form\": \"glued\", \"width\": 10 }]")]
    [InlineData("/makeUps", "[{ \"name\": \"a\", \"form\": \"plain\" }]")]
    [InlineData("/makeUps", "[{ \"name\": \"a\", \"form\": \"plain\", \"width\": 10, \"joins\": \"any\" }]")]
    [InlineData("/makeUps", "[{ \"name\": \"a\", \"form\": \"plain\", \"width\": 10, \"rows\": 9 }]")]
    [InlineData("/rates", "{ \"perHour\": \"30\" }")]
    [InlineData("/rates", "{ \"hem\": -1 }")]
    [InlineData("/rates", "{ \"cloths\": [{ \"cloth\": \"canvas\" }] }")]
    [InlineData("/cloths/0/thickness", "0")]
    [InlineData("/seam", "{ \"width\": 0 }")]
    [InlineData("/skirt", "5")]
    [InlineData("/deck", "{ \"heights\": {} }")]
    [InlineData("/deck", "{ \"ground\": { \"H0.01\": \"38\" } }")]
    [InlineData("/deck", "{ \"fall\": \"2 mm in 1 m\", \"towards\": 0 }")]
    [InlineData("/deck", "{ \"fall\": 0.1, \"towards\": \"west\" }")]
    [InlineData("/cloths", "[]")]
    [InlineData("/cloths", "{}")]
    [InlineData("/cloths/0/name", "\"a/b\"")]
    [InlineData("/cloths/0/name", "\"a \"")]
    [InlineData("/cloths/0/mass", "\"610 g\"")]
    [InlineData("/cloths/0/face", "true")]
    [InlineData("/lay", "{ \"seed\": -1 }")]
    [InlineData("/lay", "{ \"faceDown\": 1 }")]
    [InlineData("/confirmed", "[\"date\"]")]
    [InlineData("/confirmed", "[\"ease\", \"ease\"]")]
    public void Write_WrongForm_IsRefusedByReaderAndSchema(string pointer, string value)
    {
        var job = JsonNode.Parse(SampleJobs.Text("orchard-5m.json"), documentOptions: WithComments)!.AsObject();
        Set(job, pointer[1..].Split('/'), JsonNode.Parse(value)!);
        var json = job.ToJsonString();

        Assert.NotEmpty(JobReader.Read(json).Faults);
        Assert.False(Accepts(json));
    }

    // What both must accept.
    [Theory]
    [InlineData("/covers", "2.0")]
    [InlineData("/covers", "1e2")]
    [InlineData("/title", "\"\"")]
    [InlineData("/title", "\"Grün 24″\"")]
    [InlineData("/ease", "\"-0,3%\"")]
    [InlineData("/frame/cut", "4")]
    [InlineData("/frame/cut", "\"10/18\"")]
    [InlineData("/frame/size/diameter", "\"16' 4 3/8\\\"\"")]
    [InlineData("/frame/size/diameter", "4999.5")]
    [InlineData("/cloths/0/name", "\"7\"")]
    [InlineData("/cloths/0/mass", "\"18 oz/yd²\"")]
    [InlineData("/deck", "{ \"plinth\": \"6 in\", \"raise\": \"2 1/4 in\" }")]
    [InlineData("/deck", "{ \"fall\": \"2,5 mm per 1 m\", \"towards\": 12.5 }")]
    [InlineData("/deck", "{ \"datum\": \"mean\", \"fall\": \"0.2 %\", \"towards\": 0 }")]
    [InlineData("/lay", "{}")]
    [InlineData("/seam", "{ \"closing\": {} }")]
    [InlineData("/seam", "{ \"others\": [{ \"between\": [\"H0.02-H1.01\"], \"makeUp\": \"plain\" }] }")]
    [InlineData("/makeUps", "[{ \"name\": \"our fell\", \"form\": \"felled\", \"width\": \"1/2 in\", \"joins\": [\"any\"] }]")]
    [InlineData("/rates", "{}")]
    [InlineData("/rates", "{ \"perHour\": 31.5, \"seams\": [{ \"makeUp\": \"plain, closing\", \"perMetre\": 9 }] }")]
    [InlineData("/cloths/0/weld", "\"pvc\"")]
    [InlineData("/confirmed", "[\"cloths[0].selvedge\", \"lay.seed\"]")]
    public void Write_RightForm_IsAcceptedByReaderAndSchema(string pointer, string value)
    {
        var job = JsonNode.Parse(SampleJobs.Text("orchard-5m.json"), documentOptions: WithComments)!.AsObject();
        Set(job, pointer[1..].Split('/'), JsonNode.Parse(value)!);
        var json = job.ToJsonString();

        Assert.Empty(JobReader.Read(json).Faults);
        Assert.True(Accepts(json));
    }

    [Fact]
    public void Write_EveryPropertyName_IsKnownToTheReader()
    {
        foreach (var (section, name) in Properties(JsonNode.Parse(JobSchema.Write())!.AsObject(), []))
        {
            // A nonsense value at the key: the reader may refuse the value, never the key.
            JsonNode job = new JsonObject { [name] = new JsonArray(new JsonArray()) };
            foreach (var step in section.AsEnumerable().Reverse())
            {
                job = step == "[]" ? new JsonArray(job) : new JsonObject { [step] = job };
            }

            Assert.DoesNotContain(JobReader.Read(job.ToJsonString()).Faults, fault => fault.Said == "an unknown key");
        }
    }

    internal static IEnumerable<(string[] Section, string Name)> Properties(JsonObject schema, string[] section)
    {
        foreach (var (name, node) in schema["properties"]?.AsObject() ?? [])
        {
            yield return (section, name);
            foreach (var inner in Properties(node!.AsObject(), [.. section, name]).Concat(
                node["items"] is JsonObject items ? Properties(items, [.. section, name, "[]"]) : []))
            {
                yield return inner;
            }
        }
    }

    internal static bool Accepts(string json) => Schema.Evaluate(Element(json)).IsValid;

    private static JsonElement Element(string json)
    {
        using var document = JsonDocument.Parse(json, WithComments);
        return document.RootElement.Clone();
    }

    private static void Set(JsonNode at, string[] steps, JsonNode value)
    {
        foreach (var step in steps[..^1])
        {
            at = at is JsonArray list ? list[step[0] - '0']! : at[step]!;
        }

        at[steps[^1]] = value;
    }
}
