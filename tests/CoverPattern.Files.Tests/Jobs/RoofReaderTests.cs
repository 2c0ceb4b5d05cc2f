using System;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class RoofReaderTests
{
    [Fact]
    public void Read_LeastRoof_TakesItsDefaults()
    {
        var reading = JobReader.Read(JobReaderTests.With("\"roof\": { \"row\": 3 }"));

        Assert.Empty(reading.Faults);
        // Common practice, docs/job-file.md.
        var roof = reading.Job!.Roof!;
        Assert.Equal((3, 100.0, 50.0, 750.0, true), (roof.Row, roof.Flap.Millimetres, roof.HookLoop.Millimetres, roof.Tabs.Millimetres, roof.HasLoops));
        Assert.Null(roof.Screen);
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "roof.flap");
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "notions.zipLongest");
    }

    [Fact]
    public void Read_NamedFacets_AreKept()
    {
        var roof = JobReader.Read(JobReaderTests.With("\"roof\": { \"facets\": [\"F5.01\", \"F5.02\"], \"screen\": \"canvas\", \"loops\": false }")).Job!.Roof!;

        Assert.Null(roof.Row);
        Assert.Equal("F5.01 F5.02", string.Join(" ", roof.Facets));
        Assert.Equal("canvas", roof.Screen);
        Assert.False(roof.HasLoops);
    }

    [Fact]
    public void Read_NoRoof_AssumesNothingOfIt() =>
        Assert.DoesNotContain(JobReader.Read(JobReaderTests.With("\"covers\": 1")).Job!.Assumed, assumption => assumption.Place.StartsWith("roof", StringComparison.Ordinal) || assumption.Place == "notions.zipLongest");

    [Theory]
    [InlineData("\"roof\": { }", "roof", "one of them")]
    [InlineData("\"roof\": { \"row\": 3, \"facets\": [\"F5.01\"] }", "roof", "one of them")]
    [InlineData("\"roof\": { \"row\": 1 }", "roof.row", "2 to 40")]
    [InlineData("\"roof\": { \"row\": 3, \"flap\": 60 }", "roof.flap", "90 mm to 400 mm")]
    [InlineData("\"roof\": { \"row\": 3, \"hookLoop\": 60 }", "roof.hookLoop", "at most half the flap")]
    [InlineData("\"roof\": { \"row\": 3, \"screen\": \"gauze\" }", "roof.screen", "the name of one of the cloths")]
    [InlineData("\"roof\": { \"row\": 3, \"loops\": \"four\" }", "roof.loops", "true or false")]
    public void Read_OneThingWrong_NamesPlaceAndWayOut(string section, string place, string allowed)
    {
        var fault = Assert.Single(JobReader.Read(JobReaderTests.With(section)).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }
}
