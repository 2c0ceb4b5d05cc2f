using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Tests.Reports;

public sealed class ReportClosingTests
{
    [Fact]
    public void Write_ClosingSeamTypedInInches_IsPrintedInSixteenths()
    {
        var job = ReportResults.Dome(2, 3, 1828.8);
        job = job with
        {
            Frame = job.Frame with { Size = new Measure(1828.8, "6 ft") },
            Ease = 0,
            StandOff = new StandOffWish(ReportResults.Mm(0), ReportResults.Mm(0), ReportResults.Mm(0)),
            Seam = job.Seam with { Closing = new ClosingWish(ClosingWish.Rear, new Measure(38.1, "1 1/2 in"), null) },
        };

        var page = new ReportPage(ReportResults.WithoutLays(job));
        var tables = page.Section("The closing seam").Where(element => element.Name == "table")
            .Select(table => table.Descendants("tr").Select(row => row.Elements().Select(cell => cell.Value).ToArray()).ToArray()).ToArray();

        Assert.Equal(["Where", "Should be in", "Allowed error in", "Measured in", "Each side in or out in"], tables[0][0]);
        // By hand: the equator of a 2V is ten chords of 2 sin 18 degrees x 72 in = 444.984 in, 444 15.75/16; 10 mm are 6.3/16 in.
        Assert.Equal(["Ring 0 of hubs", "445", "\u00b13/8", "", ""], tables[0][2]);
        Assert.Equal(["Girth too long (too short) by in", "1/8", "1/4", "3/8"], tables[1][0]);
        Assert.Equal(["Each side in (out) by in", "1/16", "1/8", "3/16"], tables[1][1]);
    }

    [Fact]
    public void Write_OrderOfSewing_EndsWithTheClosingSeamAndTheRestOfTheHem()
    {
        var job = ReportResults.Dome(2, 3);
        var closing = job with { Seam = job.Seam with { Closing = new ClosingWish(ClosingWish.Rear, ReportResults.Mm(40), null) } };

        var steps = Steps(closing);

        Assert.StartsWith("Uprights of row 3: S", steps[0], System.StringComparison.Ordinal);
        Assert.StartsWith("Measure the girths, then the closing seam, last of all seams: S", steps[^2], System.StringComparison.Ordinal);
        Assert.Equal("The rest of the hem.", steps[^1]);
        Assert.Equal("Hem, all round.", Steps(job)[^1]);
    }

    private static string[] Steps(Job job) =>
        [.. new ReportPage(ReportResults.WithoutLays(job)).Section("Order of sewing").Single(element => element.Name == "ol").Elements("li").Select(step => step.Value)];
}
