using System.Linq;
using System.Text.Json.Nodes;
using System.Threading;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Workshop.Tests.Sewing;

namespace CoverPattern.Workshop.Tests;

public class CorridorTests
{
    private static readonly Job Felled = Thick(SewingJobs.Dome(new CoverSizes(2, 3, 2000, 25, 80, 0.004)), MakeUpForm.Felled, 0.5);

    [Fact]
    public void Run_ThickCrossings_AreAFault()
    {
        // Six felled ends come to 28 plies (worked out by hand in BulkCounterTests): 14 mm, over 8.
        var outcome = Corridor.Run(Felled, default, progress: null, CancellationToken.None);

        Assert.Null(outcome.Result);
        Assert.Equal("limits.thickness", Assert.Single(outcome.Faults).Place);
    }

    [Fact]
    public void Run_ThinEnough_ListsCrossingsInTheSummary()
    {
        var outcome = Corridor.Run(Thick(Felled, MakeUpForm.Welded, 0.6), default, progress: null, CancellationToken.None);

        // 2V 1/2: 26 hubs, 10 at the base (own calculation); of the inner ones six are corners of the solid with five struts.
        var crossings = JsonNode.Parse(SummaryFile.Write(outcome.Result!, []))!["crossings"]!.AsArray();
        Assert.Equal(26 + 10, crossings.Sum(entry => (int)entry!["count"]!));
        Assert.Equal(10, crossings.Where(entry => (string)entry!["place"]! == "hub" && (int)entry["seams"]! == 6).Sum(entry => (int)entry!["count"]!));
        Assert.Equal(6, crossings.Where(entry => (string)entry!["place"]! == "hub" && (int)entry["seams"]! == 5).Sum(entry => (int)entry!["count"]!));
        Assert.All(crossings, entry => Assert.Equal(0.6 * (int)entry!["plies"]!, (double)entry["thicknessMm"]!, 1e-6));
    }

    private static Job Thick(Job job, MakeUpForm form, double thickness) => job with
    {
        Seam = SeamWish.Of(form, SewingJobs.Mm(12)),
        Cloths = [job.Cloths[0] with { Thickness = SewingJobs.Mm(thickness) }],
        Lay = job.Lay with { Effort = 1 },
    };
}
