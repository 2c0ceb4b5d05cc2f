using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using System.Threading;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Random covers with openings of all kinds: what is refused is refused with its place and a way out; what is left is made and sews up.</summary>
public class WholePropertyTests
{
    private static readonly string[] Sections = ["openings[", "windows[", "pipes[", "roof", "liner", "insulation", "notions.zipLongest"];

    [Theory]
    [InlineData("0000KqWz5aH2")]
    [InlineData("fx4Ahm_s_HL2")]
    // A round window inside an opening of the same facet.
    [InlineData("0pET6tucSNt3")]
    // A vent over a seam of gores, of which the rim leaves two corners flat.
    [InlineData("8qNyCPOzZug1")]
    // Strips along projected rims that bend at lines of the cover: between long steps, at their ends, beside a short step.
    [InlineData("0000004Cd2Hl2")]
    [InlineData("0000004CdBBOj")]
    [InlineData("0000004CdrpIe")]
    // A hole of the liner over the fold to its skirt, where that ends at the lower edge.
    [InlineData("0000004Cdqtee")]
    // A round window in the middle of a facet that leaves two equal corners of it.
    [InlineData("0000004CeaLnC")]
    // A window that reaches over a strut by less than a tenth of a millimetre, where there is insulation.
    [InlineData("0000004CeftKE")]
    // A window that cuts a facet of the roof into two pieces, where there is a screen.
    [InlineData("0000004CeDJSQ")]
    // A rim across the narrow mouth of a gore's slit: allowances cross there, for which the opening is refused.
    [InlineData("0000004Cded68")]
    // A pipe amid a large window.
    [InlineData("8m21GjHEDnx3")]
    // A sheet on a zip whose edge crosses a fold less than its allowance from a corner.
    [InlineData("9oXby2OqNKr1")]
    // A hole of the liner whose rim ends at the very corner in which a seam meets the lower edge.
    [InlineData("bbDGmjZGegw2")]
    // A rim across a gore's slit whose allowances cross far from the rim.
    [InlineData("aKzcIk66zXC2")]
    [InlineData("4JrlydoiVbp1")]
    public void Faults_OrdersFoundOnce_None(string seed) => RandomOrders.Jobs.Sample(Hold, seed: seed, iter: 1, threads: 1, print: RandomOrders.Told);

    [Fact]
    [Trait("Category", "Long")]
    public void Faults_ThreeHundredOrders_None()
    {
        var sewn = 0;
        RandomOrders.Jobs.Sample(job => { Interlocked.Add(ref sewn, Sew(job)); }, iter: 300, print: RandomOrders.Told);

        // Most places are too near to a hub, seam or neighbour; enough are not.
        Assert.True(sewn > 300, $"only {sewn} openings were sewn up");
    }

    private static void Hold(Job job) => Sew(job);

    /// <summary>Leaves out what is refused until the rest is made, and sews that up; the number of openings in it.</summary>
    private static int Sew(Job job)
    {
        for (var left = job; ;)
        {
            var made = PieceStages.Run(left);
            if (made.Pieces is { } pieces)
            {
                var order = WholeOrder.Of(left) with { Fittings = pieces.Set.Fittings };
                if (order.CrossesLinerFlat)
                {
                    left = left with { Liner = null };
                    continue;
                }

                var faults = WholeCover.Faults(Encoding.UTF8.GetString(PiecesFile.Write(pieces.Set)), order);
                Assert.True(faults.Count == 0, string.Join("\n", faults.Take(8)));
                return order.Openings.Count;
            }

            Assert.All(made.Faults, fault => Assert.True(fault.Said.Length > 0 && fault.Allowed.Length > 0 && Sections.Any(section => fault.Place.StartsWith(section, StringComparison.Ordinal)), $"{fault}"));
            left = Without(left, made.Faults);
        }
    }

    /// <summary>The job without what its faults name.</summary>
    private static Job Without(Job job, ImmutableArray<Fault> faults)
    {
        bool IsNamed(string section) => faults.Any(fault => fault.Place.StartsWith(section, StringComparison.Ordinal));
        ImmutableArray<T> Kept<T>(ImmutableArray<T> all, string section) => [.. all.Where((_, i) => !IsNamed(FormattableString.Invariant($"{section}[{i}]")))];
        return job with
        {
            Openings = Kept(job.Openings, "openings"),
            Windows = Kept(job.Windows, "windows"),
            Pipes = Kept(job.Pipes, "pipes"),
            Roof = IsNamed("roof") || IsNamed("notions.zipLongest") ? null : job.Roof,
            Liner = IsNamed("liner") ? null : job.Liner,
            Insulation = IsNamed("insulation") ? null : job.Insulation,
        };
    }
}
