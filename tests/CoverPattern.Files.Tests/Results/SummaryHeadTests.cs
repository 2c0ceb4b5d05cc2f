using System.Text;
using System.Text.Json.Nodes;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Results;

public class SummaryHeadTests
{
    [Theory]
    [InlineData("10 ft", true)]
    [InlineData("3 m", false)]
    public void Read_SummaryOfAJob_KnowsHowItsShopMeasures(string typed, bool isInches)
    {
        var job = ReportResults.Dome(2, 3);
        var result = ReportResults.WithoutLays(job with { Frame = job.Frame with { Size = job.Frame.Size with { Typed = typed } } });

        Assert.Equal(isInches, SummaryHead.Read(SummaryFile.Write(result, [])).Notes.IsInInches);
    }

    [Fact]
    public void Read_SummaryOfAnOlderProgram_IsInMillimetres()
    {
        var job = ReportResults.Dome(2, 3);
        var result = ReportResults.WithoutLays(job with { Frame = job.Frame with { Size = new Measure(3048, "10 ft") } });
        var older = JsonNode.Parse(SummaryFile.Write(result, []))!.AsObject();
        older.Remove("lengths");

        Assert.False(SummaryHead.Read(Encoding.UTF8.GetBytes(older.ToJsonString())).Notes.IsInInches);
    }
}
