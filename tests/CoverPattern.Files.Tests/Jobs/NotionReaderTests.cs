using System;
using System.Linq;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

/// <summary>How zips and tapes are sold is assumed only where the job takes any.</summary>
public class NotionReaderTests
{
    [Theory]
    [InlineData("\"marks\": { \"ties\": \"none\" }", "")]
    [InlineData("\"marks\": { \"ties\": \"usual\" }", "tapeStep")]
    [InlineData("\"marks\": { \"ties\": \"none\" }, \"seam\": { \"makeUp\": \"zip\" }", "zipStep zipEnds")]
    [InlineData("\"marks\": { \"ties\": \"none\" }, \"seam\": { \"others\": [ { \"between\": \"uprights\", \"makeUp\": \"tape\" } ] }, \"makeUps\": [ { \"name\": \"tape\", \"form\": \"bound\", \"width\": 12 } ]", "tapeStep tapeEnds")]
    [InlineData("\"marks\": { \"ties\": \"none\" }, \"hem\": { \"kind\": \"webbing\" }", "tapeStep tapeEnds")]
    [InlineData("\"marks\": { \"ties\": \"none\" }, \"hem\": { \"kind\": \"sleeve\", \"pipe\": 20 }", "tapeStep tapeEnds")]
    public void Read_Job_AssumesWhatItTakes(string part, string assumed)
    {
        var text = $$"""{ "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": 3, "cut": "5/8", "size": { "radius": 3000 } }, "cloths": [ { "name": "a", "rollWidth": 2000 } ], {{part}} }""";

        var reading = JobReader.Read(System.Text.Encoding.UTF8.GetBytes(text));

        Assert.Empty(reading.Faults);
        Assert.Equal(
            assumed.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            reading.Job!.Assumed.Select(one => one.Place).Where(place => place.StartsWith("notions.", StringComparison.Ordinal)).Select(place => place["notions.".Length..]));
    }
}
