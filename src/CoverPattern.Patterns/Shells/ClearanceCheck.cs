using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Tells where the finished cover comes too near to the frame, and when it is too narrow below to be pulled over it.</summary>
public static class ClearanceCheck
{
    // A skirt this much nearer to the base tubes than the stand-off asks is told of; the 3V 5/8 keeps its stand-off within 2 %.
    private const double LeastShare = 0.9;

    // Cloth that lies this much inside the tubes' outer side is told of, millimetres: less is the hubs' step, which meets its planes by least squares.
    private const double LeastSunk = 0.5;

    /// <summary>Yields a warning for each kind of trouble.</summary>
    public static ImmutableArray<Notice> Check(Job job, Frame frame, Shell shell)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(shell);

        return [.. Skirt(job, frame, shell), .. Facets(job, frame, shell), .. Girth(job, frame, shell)];
    }

    private static IEnumerable<Notice> Skirt(Job job, Frame frame, Shell shell)
    {
        var slopes = job.Skirt.Shape == SkirtShape.Slope;
        var gaps = frame.Base.Select((hub, i) => (Hub: hub, Gap: ChordGap(frame, shell, (hub, frame.Base[(i + 1) % frame.Base.Length]), slopes))).ToArray();
        var nearest = gaps.MinBy(entry => entry.Gap);
        if (nearest.Gap < LeastShare * shell.StandOffMm)
        {
            var why = NearestFacet(frame, shell).Gap < job.StandOff.TubeRadius.Millimetres - LeastSunk ? TakenAway(job)
                : slopes ? "it goes on in the slope of the facets" : "it hangs straight down from facets that lie flat there";
            yield return Warn("skirt-near-tubes", frame.Hubs[nearest.Hub].Label, FormattableString.Invariant(
                $"The skirt stands {Beside(nearest.Gap)} the axes of the base struts, where {shell.StandOffMm:0.0} mm outside are asked: {why}. Compare with the tube before cutting."));
        }
    }

    /// <summary>Distance of a base strut's ends from the plane of the skirt below it: vertical, or the facet's own; negative when they stand outside.</summary>
    private static double ChordGap(Frame frame, Shell shell, (int From, int To) chord, bool slopes)
    {
        var (start, along) = (shell.Nodes[chord.From].Position, (shell.Nodes[chord.To].Position - shell.Nodes[chord.From].Position).Unit());
        var normal = slopes
            ? FaceNormal.Of(shell, shell.Faces.First(face => face.Kind == FaceKind.Facet && face.Nodes.Contains(chord.From) && face.Nodes.Contains(chord.To)))
            : Point3.Cross(along, new Point3(0, 0, 1)).Unit();
        return new[] { chord.From, chord.To }.Min(hub => Point3.Dot(normal, start - frame.Hubs[hub].Position));
    }

    private static IEnumerable<Notice> Facets(Job job, Frame frame, Shell shell)
    {
        var nearest = NearestFacet(frame, shell);
        if (nearest.Gap < job.StandOff.TubeRadius.Millimetres - LeastSunk)
        {
            yield return Warn("cloth-in-frame", nearest.Label, FormattableString.Invariant(
                $"The cloth lies {Beside(nearest.Gap)} the axes of the struts, where the tube's radius is {job.StandOff.TubeRadius.Millimetres:0.0} mm: {TakenAway(job)}."));
        }
    }

    private static string Beside(double gap) => gap < 0 ? FormattableString.Invariant($"{-gap:0.0} mm inside") : FormattableString.Invariant($"only {gap:0.0} mm outside");

    private static string TakenAway(Job job) => FormattableString.Invariant($"an ease of {job.Ease * 100:0.###} % takes away more than the stand-off gives");

    private static (string Label, double Gap) NearestFacet(Frame frame, Shell shell) =>
        frame.Facets.Select((facet, i) => (facet.Label, Gap: FacetGap(frame, shell, facet, shell.Faces[i]))).MinBy(entry => entry.Gap);

    private static double FacetGap(Frame frame, Shell shell, Facet facet, ShellFace face)
    {
        var (normal, corner) = (FaceNormal.Of(shell, face), shell.Nodes[face.Nodes[0]].Position);
        return facet.Hubs.Min(hub => Point3.Dot(normal, corner - frame.Hubs[hub].Position));
    }

    private static IEnumerable<Notice> Girth(Job job, Frame frame, Shell shell)
    {
        var girths = frame.Hubs.Select((hub, i) => (hub.Ring, At: shell.Nodes[i].Position.Plan)).GroupBy(entry => entry.Ring)
            .Select(ring => (Ring: ring.Key, Length: Rings.Perimeter([.. ring.Select(entry => entry.At)]))).ToArray();
        var (below, widest) = (girths.Single(girth => girth.Ring == 0), girths.MaxBy(girth => girth.Length));
        if (widest.Length > below.Length + 1)
        {
            var way = job.Seam.Closing is null ? "Leave a seam open for fitting (seam.closing)" : "Sew the closing seam only when it hangs";
            yield return Warn("narrow-below", string.Empty, FormattableString.Invariant(
                $"The cover is {below.Length:0} mm round at the base and {widest.Length:0} mm at ring {widest.Ring} of hubs: closed all round it cannot be pulled down over the standing frame. {way}, or hang it while the frame is raised."));
        }
    }

    private static Notice Warn(string code, string place, string text) => new(NoticeLevel.Warning, code, place, text);
}
