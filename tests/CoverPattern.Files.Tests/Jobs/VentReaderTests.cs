using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Jobs;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Tests.Jobs;

public class VentReaderTests
{
    [Fact]
    public void Read_LeastVents_AssumesTheMeshAlone()
    {
        var reading = JobReader.Read(JobReaderTests.With("\"vents\": { \"low\": [\"O1\"], \"high\": [\"O2\", \"W5.01\"] }"));

        Assert.Empty(reading.Faults);
        var vents = reading.Job!.Vents!;
        Assert.Equal(("O1", 2, 0.5, null), (vents.Low.Single(), vents.High.Length, vents.MeshShare, vents.Celsius));
        Assert.Contains(reading.Job.Assumed, assumption => assumption.Place == "vents.meshOpen");
        Assert.Null(JobReader.Read(JobReaderTests.Least).Job!.Vents);
    }

    [Theory]
    [InlineData("\"low\": [\"O1\"]", "vents.high", "required")]
    [InlineData("\"low\": [\"O1\"], \"high\": [\"O2\"], \"inside\": 30", "vents.outside", "required with the other")]
    [InlineData("\"low\": [\"O1\"], \"high\": [\"O2\"], \"inside\": 90, \"outside\": 20", "vents.inside", "-40 to 60")]
    public void Read_OneThingWrong_NamesPlaceAndWayOut(string section, string place, string allowed)
    {
        var fault = Assert.Single(JobReader.Read(JobReaderTests.With($"\"vents\": {{ {section} }}")).Faults);

        Assert.Equal(place, fault.Place);
        Assert.Contains(allowed, fault.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Paper_FlowIsThereOnlyWhereAirIsStated()
    {
        var sheet = new VentSheet([new VentArea("O1", 500_000, 500_000, 300, HasScreen: false)], [new VentArea("O2", 1_000_000, 500_000, 3800, HasScreen: true)]);
        string Paper(string air) => Encoding.UTF8.GetString(VentPaper.Write(JobReader.Read(JobReaderTests.With($"\"vents\": {{ \"low\": [\"O1\"], \"high\": [\"O2\"]{air} }}")).Job!, sheet));

        var (bare, figure) = (Paper(""), Paper(", \"inside\": 32, \"outside\": 25"));

        // Own calculation: 0.5 m2 each, 3.5 m, 305 and 298 K: 0.288 m3/s.
        Assert.Contains("About 288 litres a second", figure, StringComparison.Ordinal);
        Assert.Contains("not for the customer", figure, StringComparison.Ordinal);
        Assert.DoesNotContain("litres", bare, StringComparison.Ordinal);
    }
}
