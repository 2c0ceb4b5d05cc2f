using System;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class LinerReaderTests
{
    [Fact]
    public void Read_LeastLinerAndInsulation_TakeTheirDefaults()
    {
        var reading = JobReader.Read(JobReaderTests.With("\"liner\": { \"cloth\": \"canvas\" }, \"insulation\": { \"cloth\": \"canvas\" }"));

        Assert.Empty(reading.Faults);
        // Common practice, docs/job-file.md.
        var liner = reading.Job!.Liner!;
        Assert.Equal((40.0, 50.0, 30.0), (liner.Gap.Millimetres, liner.Hem.Millimetres, liner.Margin.Millimetres));
        Assert.Null(liner.RoofRow);
        Assert.Null(liner.Openings);
        Assert.Equal(5, reading.Job.Insulation!.Tuck.Millimetres);
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "standOff.hubRadius");
    }

    [Theory]
    [InlineData("\"liner\": { }", "liner.cloth", "required")]
    [InlineData("\"liner\": { \"cloth\": \"felt\" }", "liner.cloth", "the name of one of the cloths")]
    [InlineData("\"liner\": { \"cloth\": \"canvas\", \"gap\": \"20 mm\" }", "liner.gap", "25 mm to 500 mm")]
    [InlineData("\"liner\": { \"cloth\": \"canvas\", \"roofRow\": 1 }", "liner.roofRow", "2 to 40")]
    [InlineData("\"insulation\": { \"cloth\": \"felt\" }", "insulation.cloth", "the name of one of the cloths")]
    public void Read_OneThingWrong_NamesPlaceAndWayOut(string section, string place, string allowed)
    {
        var fault = Assert.Single(JobReader.Read(JobReaderTests.With(section)).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }
}
