using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds pipes against the seams that were planned: zips within the clear distance, seams cut too flatly or passed too near.</summary>
public static class PipeSeamCheck
{
    /// <summary>All that is wrong, each zip by its strut.</summary>
    /// <param name="job">Clearances and zips in seams are read.</param>
    /// <param name="shell">The surface.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="pipes">The pipes.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, SeamPlan plan, ImmutableArray<LaidPipe> pipes)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. pipes.SelectMany(pipe => Zips(job, shell, plan, pipe).Concat(Cut(shell, plan, pipe)).Concat(Beside(job, shell, plan, pipe)))];
    }

    private static IEnumerable<Fault> Zips(Job job, Shell shell, SeamPlan plan, LaidPipe pipe)
    {
        var reach = shell.Nodes.Max(node => Point3.Distance(node.Position, pipe.Axis.Foot));
        var (from, to) = (pipe.Axis.Foot - (pipe.Wish.ClearRadius * pipe.Axis.Outward), pipe.Axis.Foot + (reach * pipe.Axis.Outward));
        foreach (var zip in WholeZips(job, shell, plan).Concat(PartZips(job, shell)))
        {
            var gap = Segments3.Distance(from, to, zip.From, zip.To) - (zip.Width + (pipe.Wish.Diameter.Millimetres / 2));
            if (gap < pipe.Wish.Clear.Millimetres)
            {
                yield return Refuse(
                    pipe,
                    FormattableString.Invariant($"the zip over strut {zip.Strut} lies {Math.Max(0, gap):0} mm from the pipe's wall, inside its clear distance"),
                    $"no zip within the clear distance of {pipe.Wish.Clear.Typed}: another make-up there, or another place");
            }
        }
    }

    /// <summary>Seams that are zips from end to end, with what reaches beyond them on each side.</summary>
    private static IEnumerable<(string Strut, Point3 From, Point3 To, double Width)> WholeZips(Job job, Shell shell, SeamPlan plan) => Enumerable.Range(0, shell.Edges.Length)
        .Where(edge => plan.Edges[edge].Role == EdgeRole.Seam && plan.Edges[edge].MakeUp?.Form == MakeUpForm.Zip)
        .Select(edge => ($"{shell.Nodes[shell.Edges[edge].From].Label}-{shell.Nodes[shell.Edges[edge].To].Label}", shell.Nodes[shell.Edges[edge].From].Position, shell.Nodes[shell.Edges[edge].To].Position, ReachOf(job, plan.Edges[edge].MakeUp!)));

    /// <summary>How far cloth and tape reach on one side of a zip: of a roof's the flap that hangs over the wall.</summary>
    private static double ReachOf(Job job, MakeUp zip) => string.Equals(zip.Name, RoofWish.ZipName, StringComparison.Ordinal) && job.Roof is { } roof
        ? Math.Max(zip.Width.Millimetres, roof.Flap.Millimetres)
        : zip.Width.Millimetres;

    /// <summary>Zips that take a part of a seam, from the hub that is named first on.</summary>
    private static IEnumerable<(string Strut, Point3 From, Point3 To, double Width)> PartZips(Job job, Shell shell)
    {
        var edges = HubLabels.EdgesByStrut(shell);
        foreach (var zip in job.Seam.Zips.Where(zip => edges.ContainsKey(zip.Strut)))
        {
            var edge = shell.Edges[edges[zip.Strut]];
            var isForward = zip.Strut.StartsWith(shell.Nodes[edge.From].Label + "-", StringComparison.Ordinal);
            var (hub, along) = isForward ? (shell.Nodes[edge.From].Position, shell.Nodes[edge.To].Position) : (shell.Nodes[edge.To].Position, shell.Nodes[edge.From].Position);
            var step = (along - hub).Unit();
            yield return (zip.Strut, hub + (zip.From.Millimetres * step), hub + ((zip.From.Millimetres + zip.Length.Millimetres) * step), SeamZip.MakeUp.Width.Millimetres);
        }
    }

    private static IEnumerable<Fault> Cut(Shell shell, SeamPlan plan, LaidPipe pipe)
    {
        var flattest = RimSeams.Flattest(shell, plan, pipe.Region);
        if (flattest < RimSeams.FlattestCrossing)
        {
            yield return Refuse(pipe, FormattableString.Invariant($"the rim of its patch crosses a seam under {flattest:0} degrees"), FormattableString.Invariant($"at least {RimSeams.FlattestCrossing:0} degrees: another place"));
        }

        if (RimSeams.CutsClosing(plan, pipe.Region))
        {
            yield return Refuse(pipe, "the rim of its patch cuts through the closing seam", "a closing seam in one piece: let it rise elsewhere (seam.closing.at), or move the pipe");
        }
    }

    private static IEnumerable<Fault> Beside(Job job, Shell shell, SeamPlan plan, LaidPipe pipe)
    {
        var least = Math.Max(job.Clearances.Seam.Millimetres, pipe.Wish.Lap.Millimetres);
        var gap = RimSeams.Beside(shell, plan, pipe.Region);
        if (gap < least)
        {
            yield return Refuse(pipe, FormattableString.Invariant($"{gap:0.0} mm from the rim of its patch to a seam that it does not cross"), FormattableString.Invariant($"at least {least:0} mm, clearance of seams and lap of the patch: another place"));
        }
    }

    private static Fault Refuse(LaidPipe pipe, string said, string allowed) => new(FormattableString.Invariant($"pipes[{pipe.Entry}]"), said, allowed);
}
