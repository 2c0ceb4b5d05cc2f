using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Holds zips in seams against the seams there are, hubs, other zips and openings.</summary>
public static class SeamZipCheck
{
    // A zip nearer to a hub lies under its patch or where other seams come in (own choice), millimetres.
    private const double FromHub = 100;

    // A shorter zip is no opening (own choice), millimetres: as at the rim of an opening.
    private const double Shortest = 100;

    /// <summary>Everything that cannot be sewn; empty when all is well.</summary>
    /// <param name="job">Its zips in seams and notions are read.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="plan">The plan of its seams.</param>
    /// <param name="openings">What is taken out.</param>
    public static ImmutableArray<Fault> Faults(Job job, Shell shell, SeamPlan plan, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(openings);
        return
        [
            .. Unknown(job, shell),
            .. plan.Cuts.SelectMany(cut => FaultsOf(job, shell, plan, cut)),
            .. plan.Cuts.SelectMany(cut => Neighbours(job, shell, plan, cut, openings)),
        ];
    }

    private static string PlaceOf(int entry) => FormattableString.Invariant($"seam.zips[{entry}]");

    private static IEnumerable<Fault> Unknown(Job job, Shell shell)
    {
        var struts = HubLabels.EdgesByStrut(shell);
        return job.Seam.Zips.Select((zip, i) => (zip, i)).Where(entry => !struts.ContainsKey(entry.zip.Strut))
            .Select(entry => new Fault(PlaceOf(entry.i) + ".strut", $"\"{entry.zip.Strut}\"", "a strut of this frame as two labels of hubs, such as " + $"\"{HubLabels.StrutOf(shell, 0)}\""));
    }

    private static IEnumerable<Fault> FaultsOf(Job job, Shell shell, SeamPlan plan, SeamCut cut)
    {
        var (zip, edge) = (job.Seam.Zips[cut.Entry], shell.Edges[cut.Line]);
        if (plan.Edges[cut.Line] is not { Role: EdgeRole.Seam, MakeUp: { } makeUp })
        {
            yield return new Fault(PlaceOf(cut.Entry) + ".strut", $"\"{zip.Strut}\"", "a strut with a seam over it: the cloth goes over this one uncut, or ends there. Cut the panel there, or make a slit with a zip beside it");
            yield break;
        }

        if (makeUp.IsClosing)
        {
            yield return new Fault(PlaceOf(cut.Entry) + ".strut", $"\"{zip.Strut}\", which is part of the closing seam", "another seam: the closing seam is trimmed and sewn last, in one");
        }

        if (makeUp.Form == MakeUpForm.Zip)
        {
            yield return new Fault(PlaceOf(cut.Entry) + ".strut", $"\"{zip.Strut}\", whose seam is a zip from end to end", "a seam that is sewn");
        }

        var kept = FaceClip.KeptShare(shell, cut.Line);
        if (kept < 1)
        {
            yield return new Fault(PlaceOf(cut.Entry) + ".strut", $"\"{zip.Strut}\", which the finished edge cuts off", "a strut that lies above the finished edge whole");
        }

        var (before, after) = (cut.From * edge.LengthMm, (1 - cut.To) * edge.LengthMm);
        if (Math.Min(before, after) < FromHub)
        {
            yield return new Fault(PlaceOf(cut.Entry), FormattableString.Invariant($"a zip {Math.Min(before, after):0} mm from a hub"), FormattableString.Invariant($"at least {FromHub:0} mm from both hubs of a strut that is {edge.LengthMm:0} mm long on the cover: a shorter zip, or another beginning"));
        }

        if (zip.Length.Millimetres < Shortest || zip.Length.Millimetres > job.Notions.ZipLongest.Millimetres)
        {
            yield return new Fault(PlaceOf(cut.Entry) + ".length", zip.Length.Typed, FormattableString.Invariant($"{Shortest:0} mm to {job.Notions.ZipLongest.Typed} (notions.zipLongest)"));
        }
    }

    private static IEnumerable<Fault> Neighbours(Job job, Shell shell, SeamPlan plan, SeamCut cut, OpeningLaying openings)
    {
        var margin = job.Clearances.Seam.Millimetres / shell.Edges[cut.Line].LengthMm;
        foreach (var other in plan.Cuts.Where(other => other.Entry < cut.Entry && other.Line == cut.Line && other.From < cut.To + margin && cut.From < other.To + margin))
        {
            yield return new Fault(PlaceOf(cut.Entry), $"a zip beside or over that of {PlaceOf(other.Entry)}", $"zips apart by {job.Clearances.Seam.Typed} at least, or one zip");
        }

        var surface = new ClippedShell(shell);
        foreach (var region in openings.Regions.Where(region => Takes(surface, region, cut.Line, (cut.From - margin, cut.To + margin))))
        {
            yield return new Fault(PlaceOf(cut.Entry), $"a zip where {region.Label} crosses the seam or takes it out", $"a part of a seam that is left, {job.Clearances.Seam.Typed} at least from an opening: another beginning, or another seam");
        }
    }

    /// <summary>Whether a region takes out any of a line between two shares of it.</summary>
    private static bool Takes(ClippedShell surface, Region region, int line, (double From, double To) between) => !region.Rim[0].IsRing && FaceCutter.Cut(surface, [region])!.Value
        .Where(cell => cell.Region == 0)
        .SelectMany(cell => Enumerable.Range(0, cell.Edges.Length).Where(i => !cell.Edges[i].IsRim && cell.Edges[i].Line == line).Select(i => Shares(surface, cell, i)))
        .Any(taken => taken.Low < between.To && between.From < taken.High);

    private static (double Low, double High) Shares(ClippedShell surface, FaceCell cell, int edge)
    {
        var (from, to) = surface.Ends(cell.Face, cell.Edges[edge].Line);
        double ShareOf(Point2 at) => Point2.Dot(at - from, to - from) / Point2.Dot(to - from, to - from);
        var (here, there) = (ShareOf(cell.Corners[edge]), ShareOf(cell.Corners[(edge + 1) % cell.Corners.Length]));
        return (Math.Min(here, there), Math.Max(here, there));
    }
}
