using System;
using CoverPattern.Files.Jobs;

namespace CoverPattern.Files.Tests.Jobs;

public class BagReaderTests
{
    [Fact]
    public void Read_LeastBagAndFlap_TakeTheirDefaults()
    {
        var reading = JobReader.Read(JobReaderTests.With("\"bag\": { \"cloth\": \"canvas\" }, \"groundFlap\": { \"cloth\": \"canvas\", \"side\": \"inward\" }"));

        Assert.Empty(reading.Faults);
        // Common practice, docs/job-file.md.
        Assert.Equal((null, 3.0), (reading.Job!.Bag!.Size, reading.Job.Bag.Packing));
        Assert.Equal((300.0, true), (reading.Job.GroundFlap!.Width.Millimetres, reading.Job.GroundFlap.IsInward));
    }

    [Theory]
    [InlineData("\"bag\": { \"cloth\": \"canvas\", \"length\": \"1 m\" }", "bag.width", "all of length, width and height")]
    [InlineData("\"bag\": { \"cloth\": \"felt\" }", "bag.cloth", "the name of one of the cloths")]
    [InlineData("\"bag\": { }", "bag.cloth", "required")]
    [InlineData("\"groundFlap\": { \"cloth\": \"canvas\" }", "groundFlap.side", "required")]
    [InlineData("\"groundFlap\": { \"cloth\": \"canvas\", \"side\": \"inward\", \"width\": 20 }", "groundFlap.width", "50 mm to 1 m")]
    public void Read_OneThingWrong_NamesPlaceAndWayOut(string section, string place, string allowed)
    {
        var fault = Assert.Single(JobReader.Read(JobReaderTests.With(section)).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }
}
