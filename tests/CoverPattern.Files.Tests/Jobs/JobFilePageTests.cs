using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>Holds docs/job-file.md to what the program reads and writes.</summary>
public sealed class JobFilePageTests
{
    private static readonly string Page = SampleJobs.Page("job-file.md");

    [Fact]
    public void Page_Keys_AreThoseOfTheSchemaInTheSameOrder()
    {
        var expected = JobSchemaTests.Properties(JsonNode.Parse(JobSchema.Write())!.AsObject(), [])
            .Select(key => string.Join('.', key.Section.Append(key.Name)).Replace(".[]", "[]", StringComparison.Ordinal));

        Assert.Equal(expected, Rows().Select(row => row[0].Trim('`')));
    }

    [Fact]
    public void Page_Defaults_AreThoseThatTheReaderTakes()
    {
        var rowByKey = Rows().ToDictionary(row => row[0].Trim('`'), StringComparer.Ordinal);

        var assumed = JobReader.Read(StarterJob.Write(new StarterAnswers(new DateOnly(2026, 5, 4)))).Job!.Assumed;

        Assert.NotEmpty(assumed);
        Assert.All(assumed, assumption =>
        {
            var row = rowByKey[assumption.Place.Replace("[0]", "[]", StringComparison.Ordinal)];
            Assert.Contains(assumption.Value, row[3], StringComparison.Ordinal);
            Assert.Equal(assumption.Standing, row[4] == "CP" ? "common practice, no source" : row[4]);
        });
    }

    [Fact]
    public void Page_NumberLimits_AreThoseOfTheSchema()
    {
        foreach (var (row, schema) in Rows().Zip(JobSchemaTests.Properties(JsonNode.Parse(JobSchema.Write())!.AsObject(), []).Select(Node)))
        {
            if (schema["type"]?.ToJsonString() == "\"integer\"" && schema["maximum"]!.GetValue<int>() > 1)
            {
                Assert.StartsWith(FormattableString.Invariant($"{schema["minimum"]} to {schema["maximum"]}"), row[2], StringComparison.Ordinal);
            }
            else if (schema["pattern"]?.GetValue<string>() == LengthParser.Pattern)
            {
                Assert.StartsWith(Limit(schema["minimum"]!) + " to " + Limit(schema["maximum"]!), row[2], StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Page_Cuts_AreTheCustomaryNames() => Assert.All(Enumerable.Range(1, 12), frequency =>
    {
        var names = string.Join(", ", CutNames.Customary(frequency).Select(cut => $"{cut.Name} ({cut.Rows})"));

        Assert.Contains(FormattableString.Invariant($"| {frequency} | {names} |"), Page, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("at frequency 3: \"3/8\" (4 rows), \"5/8\" (5 rows), or 1 to 8 rows; the name of a cut such as \"5/8\", a number of rows counted from the top, or a list of hubs along the cut such as [\"T5.01\", \"T5.02\"]", "\"frame\": { \"frequency\": 3, \"cut\": \"1/2\" }")]
    [InlineData("a unit is missing: mm, cm, m, in, ft, ' or \"; a length such as", "\"skirt\": { \"drop\": \"60\" }")]
    [InlineData("did you mean \"rollWidth\"? known here: name, rollWidth,", "\"cloths\": [ { \"rollwidth\": \"2 m\" } ]")]
    [InlineData("a ratio such as \"0.3 %\", or a bare number such as 0.003; -5 % to 5 % here", "\"ease\": 0.3")]
    [InlineData("the job was written for a newer program, this one reads version 1; a whole number, 1 to 1", "\"schemaVersion\": 2")]
    public void Page_Messages_AreThoseThatTheReaderSays(string message, string wrong)
    {
        Assert.Contains(message, Page, StringComparison.Ordinal);
        Assert.Contains(JobReader.Read("{" + wrong + "}").Faults, fault => fault.Allowed.StartsWith(message, StringComparison.Ordinal));
    }

    /// <summary>Rows of the table of keys, cell by cell.</summary>
    private static List<string[]> Rows() =>
    [
        .. Page.Split("## Every key", StringSplitOptions.None)[1].Split("## ", StringSplitOptions.None)[0].Split('\n')
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Trim('|', ' ').Split(" |", StringSplitOptions.None).Select(cell => cell.Trim(' ', '|')).ToArray()),
    ];

    private static JsonObject Node((string[] Section, string Name) key)
    {
        var at = JsonNode.Parse(JobSchema.Write())!.AsObject();
        foreach (var step in key.Section.Append(key.Name))
        {
            at = (step == "[]" ? at["items"]! : at["properties"]![step]!).AsObject();
        }

        return at;
    }

    private static string Limit(JsonNode millimetres) => millimetres.GetValue<double>() is >= 1000 and var far
        ? FormattableString.Invariant($"{far / 1000} m")
        : FormattableString.Invariant($"{millimetres} mm");
}
