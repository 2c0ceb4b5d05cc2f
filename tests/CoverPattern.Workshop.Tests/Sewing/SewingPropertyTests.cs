using System.Linq;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Random valid jobs all sew up.</summary>
public class SewingPropertyTests
{
    // Facets of a frame are at least this long, as a share of the radius divided by the frequency (class A of 8V: 0.956).
    private const double ShortestStrut = 0.95;

    private static readonly Gen<CoverSizes> Sizes =
        from frequency in Gen.Int[1, 6]
        from rows in Gen.Int[1, (3 * frequency) - 1]
        from radius in Gen.Double[1000, 10000]
        from standOff in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 80])
        from drop in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 250])
        from ease in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.02, 0.02])
        select new CoverSizes(frequency, rows, radius, standOff, drop, ease);

    private static readonly Gen<MarkWish> Marks =
        from ties in Gen.Enum<TieRule>()
        from distance in Gen.Double[0, 200]
        from patches in Gen.Enum<HubPatchPlace>()
        from diameter in Gen.Double[70, 300]
        from apex in Gen.Double[70, 500]
        select new MarkWish(ties, SewingJobs.Mm(distance), patches, SewingJobs.Mm(diameter), SewingJobs.Mm(apex));

    private static readonly Gen<Job> AnyJobs =
        from sizes in Sizes
        from makeUp in Gen.Enum<MakeUpForm>()
        from widthShare in Gen.Double[0.005, 0.02]
        from nap in Gen.Enum<Nap>()
        from turns in Gen.Enum<TurnRule>()
        from hasFace in Gen.Bool
        from covers in Gen.Int[1, 2]
        from corners in Gen.Enum<CornerStyle>()
        from stops in Gen.Bool
        from marks in Marks
        let job = SewingJobs.Dome(sizes)
        select job with
        {
            Covers = covers,
            Seam = SeamWish.Of(makeUp, SewingJobs.Mm(widthShare * ShortestStrut * sizes.Radius / sizes.Frequency)) with { Corners = corners, StopAtHubs = stops },
            Marks = marks,
            Cloths = [job.Cloths[0] with { Nap = nap, HasFace = hasFace }],
            Lay = job.Lay with { Turns = turns },
        };

    /// <summary>Jobs of which pieces are made: where allowances cross, the corridor refuses the job, and there is nothing to sew.</summary>
    private static readonly Gen<Job> ValidJobs = AnyJobs.Where(job => SewingJobs.Finish(job).Faults.IsEmpty);

    /// <summary>What is refused is not sewn up: so that no fault hides there, seams of a fiftieth of a strut and less are seldom refused.</summary>
    [Fact]
    public void Finish_HundredRandomJobs_AtMostOneInTenIsRefused()
    {
        var refused = 0;

        AnyJobs.Sample(job => System.Threading.Interlocked.Add(ref refused, SewingJobs.Finish(job).Faults.IsEmpty ? 0 : 1), iter: 100, print: Told);

        Assert.InRange(refused, 0, 10);
    }

    [Fact]
    public void Faults_SixtyRandomJobs_None() => ValidJobs.Sample(Sews, iter: 60, print: Told);

    [Fact]
    [Trait("Category", "Long")]
    public void Faults_FiveHundredRandomJobs_None() => ValidJobs.Sample(Sews, iter: 500, print: Told);

    private static void Sews(Job job) => Assert.Empty(SewingUp.Faults(SewingJobs.PiecesText(job), SewingJobs.OrderOf(job)));

    private static string Told(Job job) => SewingJobs.OrderOf(job).ToString();
}
