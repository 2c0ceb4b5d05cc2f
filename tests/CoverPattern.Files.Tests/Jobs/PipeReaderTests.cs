using System;
using System.Linq;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class PipeReaderTests
{
    private const string Good = """{ "run": "vertical", "facet": "F4.02", "diameter": "150 mm", "clear": "6 in", "cloth": "heat" }""";

    [Fact]
    public void Read_LeastPipe_TakesDefaultsButNeverTheClearDistance()
    {
        var reading = Read(Good);

        Assert.Empty(reading.Faults);
        var pipe = reading.Job!.Pipes.Single();
        Assert.Equal((PipeRun.Vertical, "F4.02", 152.4, 550), (pipe.Place.Run, pipe.Place.Facet, pipe.Clear.Millimetres, reading.Job.Cloths[1].ServiceTemperature));
        // The shop's own defaults, docs/job-file.md.
        Assert.Equal((3, 150, 15, 40, 80, 40), (pipe.Gap.Millimetres, pipe.Sleeve.Millimetres, pipe.TurnUnder.Millimetres, pipe.Lap.Millimetres, pipe.RainFlap.Millimetres, pipe.ClosingFlap.Millimetres));
        Assert.DoesNotContain(reading.Job.Assumed, assumption => assumption.Place is "pipes[0].clear" or "cloths[1].serviceTemperature");
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "clearances.opening");
    }

    [Theory]
    [InlineData("\"clear\": \"6 in\",", "", "pipes[0].clear", "there is no default")]
    [InlineData("\"heat\"", "\"canvas\"", "pipes[0].cloth", "cloths[0].serviceTemperature, in degrees Celsius")]
    [InlineData("\"heat\"", "\"felt\"", "pipes[0].cloth", "the name of one of the cloths")]
    [InlineData("\"facet\": \"F4.02\",", "", "pipes[0]", "one of them")]
    [InlineData("\"facet\": \"F4.02\",", "\"facet\": \"F4.02\", \"x\": 0, \"y\": 0,", "pipes[0]", "one of them")]
    [InlineData("\"facet\": \"F4.02\",", "\"x\": 0,", "pipes[0].y", "required with x")]
    [InlineData("\"facet\": \"F4.02\",", "\"facet\": \"F4.02\", \"above\": \"1 m\",", "pipes[0].above", "go with a level pipe")]
    [InlineData("\"vertical\", \"facet\": \"F4.02\",", "\"level\", \"above\": \"1 m\", \"towards\": 10, \"up\": 5,", "pipes[0].up", "go with facet")]
    [InlineData("\"150 mm\"", "\"30 mm\"", "pipes[0].diameter", "60 mm to 600 mm")]
    [InlineData("\"6 in\"", "\"60 mm\", \"closingFlap\": \"20 mm\"", "pipes[0].rainFlap", "at most 47 mm")]
    [InlineData("\"6 in\"", "\"6 in\", \"turnUnder\": \"40 mm\"", "pipes[0].turnUnder", "at most a quarter")]
    [InlineData("\"6 in\"", "\"6 in\", \"boot\": \"cone\"", "pipes[0].spread", "required of a cone boot")]
    [InlineData("\"6 in\"", "\"6 in\", \"spread\": 20", "pipes[0].spread", "goes with")]
    public void Read_OneThingWrong_NamesPlaceAndWayOut(string old, string wrong, string place, string allowed)
    {
        var text = Good.Replace(old, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Good, text);

        var fault = Assert.Single(Read(text).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    private static JobReading Read(string pipe) => JobReader.Read(JobReaderTests.With($"\"pipes\": [ {pipe} ]").Replace(
        "{ \"name\": \"canvas\", \"rollWidth\": \"2 m\" }", "{ \"name\": \"canvas\", \"rollWidth\": \"2 m\" }, { \"name\": \"heat\", \"rollWidth\": \"1 m\", \"serviceTemperature\": 550 }", StringComparison.Ordinal));
}
