using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>Cost and closing seam in report.html and summary.json.</summary>
public sealed class ReportCostTests
{
    private static readonly Job Closed = ReportResults.Dome(2, 3) with
    {
        Seam = SeamWish.Of(MakeUpForm.Bound, ReportResults.Mm(12)) with { Closing = new ClosingWish(ClosingWish.Rear, ReportResults.Mm(40), null) },
    };

    [Fact]
    public void Write_NoRates_SaysNotPricedAndNeverZero()
    {
        var result = ReportResults.WithoutLays(Closed);

        Assert.Contains("Not priced: the job states no rates.", Words(result), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, Summary(result).GetProperty("cost").GetProperty("total").ValueKind);
    }

    [Fact]
    public void Write_SomeRates_NamesWhatIsMissing()
    {
        var result = ReportResults.WithoutLays(Closed with { Rates = RatesWish.None with { Currency = "EUR", PerHour = 30, Seams = [new SeamRate("bound", 6)] } });

        Assert.Contains("No total: not priced: minutes for hem, minutes for pieces handled are missing.", Words(result), StringComparison.Ordinal);
        Assert.Contains("Amount EUR", Words(result), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_AllRates_PrintsTheTotal()
    {
        // Lays are left off, so no cloth is bought and work alone is priced.
        var result = ReportResults.WithoutLays(Closed with { Rates = new RatesWish("EUR", 30, 1, 1, [], [new SeamRate("bound", 6)]) });
        var seams = result.Estimate.Total.Seams.Sum(seam => seam.LengthMm) / 1000;

        // By hand: minutes at 30 an hour are half as much money.
        var total = ((6 * seams) + (result.Estimate.Total.HemMm / 1000) + 40) / 2;
        Assert.Equal(total, result.Estimate.Cost.Total!.Value, 6);
        Assert.Contains(Printed.Number(total, 2), Words(result), StringComparison.Ordinal);
        Assert.Equal(total, Summary(result).GetProperty("cost").GetProperty("total").GetDouble(), 5);
    }

    [Fact]
    public void Write_ClosingSeam_TellsGirthsBeforeIt()
    {
        var result = ReportResults.WithoutLays(Closed);

        var girths = ClosingSeam.Girths(result.Shell, Closed.Seam.Closing!);
        var closing = Summary(result).GetProperty("seams").GetProperty("closing");
        // 2V of three rows: rings 0 to 3, the top hub alone in ring 3.
        Assert.Equal([0, 1, 2], closing.GetProperty("girths").EnumerateArray().Select(girth => girth.GetProperty("ring").GetInt32()));
        Assert.Equal((10, 0.5), (closing.GetProperty("allowedErrorMm").GetDouble(), closing.GetProperty("takeInEachSidePerMm").GetDouble()));
        Assert.Equal(result.Cut.Arcs.Count(arc => arc.MakeUp is { IsClosing: true }), closing.GetProperty("seams").GetArrayLength());
        Assert.Contains("The closing seam", Words(result), StringComparison.Ordinal);
        Assert.All(girths, girth => Assert.Contains(Printed.Mm(girth.LengthMm), Words(result), StringComparison.Ordinal));
        Assert.DoesNotContain("The closing seam", Words(ReportResults.WithoutLays(ReportResults.Dome(2, 3))), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_Bound_ListsBindingsWithTheirWidth()
    {
        var result = ReportResults.WithoutLays(Closed);

        // By hand: seen 12 mm and turned in 6 mm on either face.
        var notions = Summary(result).GetProperty("seams").GetProperty("notions").EnumerateArray().ToArray();
        Assert.Equal(["bound", "bound, closing"], notions.Select(notion => notion.GetProperty("makeUp").GetString()));
        Assert.All(notions, notion => Assert.Equal(("binding", 36.0), (notion.GetProperty("what").GetString(), notion.GetProperty("widthMm").GetDouble())));
        Assert.Contains("binding cut 36.0 mm wide", Words(result), StringComparison.Ordinal);
    }

    private static string Words(Result result) => string.Join('\n', Texts(XDocument.Parse(Encoding.UTF8.GetString(ReportFile.Write(result))).Root!));

    private static IEnumerable<string> Texts(XElement element) => element.DescendantNodes().OfType<XText>().Select(text => text.Value);

    private static JsonElement Summary(Result result)
    {
        using var document = JsonDocument.Parse(SummaryFile.Write(result, []));
        return document.RootElement.Clone();
    }
}
