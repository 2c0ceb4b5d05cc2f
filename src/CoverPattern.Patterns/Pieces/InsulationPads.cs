using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes insulation pads: one in every facet of the frame, tucked behind its tubes, never over a strut, none where a window, an opening or a stove pipe is.</summary>
/// <remarks>A pad is the facet between the struts' axes, less tube radius and plus tuck on every side; at hubs its corners are cut square across, clear of the hub.</remarks>
public static class InsulationPads
{
    // Two pads never meet over a strut: so much stays free of its axis (own choice), millimetres.
    private const double BesideAxis = 1;

    /// <summary>The pads, "A1.07" for facet F1.07; none where no insulation is wished.</summary>
    /// <param name="job">Insulation, tubes and hubs are read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="openings">What was laid on the cover.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, Frame frame, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(openings);
        return job.Insulation is not { } wish
            ? []
            : [.. Enumerable.Range(0, frame.Facets.Length).Where(facet => !IsLeftOut(frame, openings, facet)).Select(facet => Pad(wish.Cloth, frame.Facets[facet], Outline(job, Flat(frame, frame.Facets[facet]))))];
    }

    /// <summary>What the job says wrongly: a tuck that reaches to the strut's axis, pads of which nothing is left.</summary>
    /// <param name="job">Insulation, tubes and hubs are read.</param>
    /// <param name="frame">The frame.</param>
    public static ImmutableArray<Fault> Faults(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        if (job.Insulation is not { } wish)
        {
            return [];
        }

        if (wish.Tuck.Millimetres > job.StandOff.TubeRadius.Millimetres - BesideAxis)
        {
            return [new Fault("insulation.tuck", wish.Tuck.Typed, FormattableString.Invariant($"less than the tubes' radius, {job.StandOff.TubeRadius.Typed}: pads must not meet over a strut"))];
        }

        return
        [
            .. frame.Facets.Where(facet => Outline(job, Flat(frame, facet)) is var ring && (ring.Length < 3 || !ExactPredicates.IsSimple(Rings.ToSteps(ring)) || Rings.SignedArea(ring) <= 0)).Take(1)
                .Select(facet => new Fault("insulation", $"a pad in facet {facet.Label}, of which tubes and hubs leave nothing", "facets larger than their hubs: thinner tubes or smaller hubs (standOff.hubRadius)")),
        ];
    }

    /// <summary>Tells which facets have no pad.</summary>
    /// <param name="job">Whether there is insulation.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="openings">What was laid on the cover.</param>
    public static ImmutableArray<Notice> Notices(Job job, Frame frame, OpeningLaying openings)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(openings);
        string[] left = job.Insulation is null ? [] : [.. Enumerable.Range(0, frame.Facets.Length).Where(facet => IsLeftOut(frame, openings, facet)).Select(facet => frame.Facets[facet].Label)];
        return left.Length == 0 ? [] : [new Notice(NoticeLevel.Note, "facets-without-pad", left[0], $"No insulation pad in {string.Join(", ", left)}: a window, an opening or a stove pipe's clear distance reaches there.")];
    }

    /// <summary>Whether a region lies on the facet, or it comes within a pipe's clear distance.</summary>
    private static bool IsLeftOut(Frame frame, OpeningLaying openings, int facet) =>
        openings.Regions.Any(region => region.Rim.Any(stretch => stretch.Face == facet) || region.Centre.Face == facet)
        || openings.Openings.Any(opening => opening.HubsInside.Any(hub => frame.Facets[facet].Hubs.Any(own => string.Equals(frame.Hubs[own].Label, hub, StringComparison.Ordinal))))
        || openings.Pipes.Any(pipe => Away(frame, pipe, frame.Facets[facet]) < pipe.Wish.ClearRadius);

    /// <summary>Least distance of a facet's border from a pipe's middle line; the ease, which is left in, is far less than a tube's radius.</summary>
    private static double Away(Frame frame, LaidPipe pipe, Facet facet)
    {
        var reach = frame.Hubs.Max(hub => Point3.Distance(hub.Position, pipe.Axis.Foot));
        var (from, to) = (pipe.Axis.Foot - (pipe.Wish.ClearRadius * pipe.Axis.Outward), pipe.Axis.Foot + (reach * pipe.Axis.Outward));
        return facet.Hubs.Select((hub, i) => Segments3.Distance(from, to, frame.Hubs[hub].Position, frame.Hubs[facet.Hubs[(i + 1) % facet.Hubs.Length]].Position)).Min();
    }

    /// <summary>The facet between hub centres in its own plane, counter-clockwise seen from outside, first edge on +x.</summary>
    private static ImmutableArray<Point2> Flat(Frame frame, Facet facet)
    {
        var corners = facet.Hubs.Select(hub => frame.Hubs[hub].Position).ToArray();
        var along = (corners[1] - corners[0]).Unit();
        var across = Point3.Cross(Point3.Cross(along, corners[^1] - corners[0]).Unit(), along);
        return [.. corners.Select(corner => new Point2(Point3.Dot(corner - corners[0], along), Point3.Dot(corner - corners[0], across)))];
    }

    private static ImmutableArray<Point2> Outline(Job job, ImmutableArray<Point2> facet)
    {
        var inset = job.StandOff.TubeRadius.Millimetres - job.Insulation!.Tuck.Millimetres;
        return [.. facet.SelectMany((hub, i) => Corner(facet[(i + facet.Length - 1) % facet.Length], hub, facet[(i + 1) % facet.Length], (inset, job.StandOff.HubRadius.Millimetres)))];
    }

    /// <summary>The corner between two sides moved in, cut square across where it would come nearer to the hub than it may.</summary>
    private static IEnumerable<Point2> Corner(Point2 before, Point2 hub, Point2 after, (double Inset, double Hub) free)
    {
        var (back, ahead) = ((before - hub).Unit(), (after - hub).Unit());
        var half = Math.Acos(Math.Clamp(Point2.Dot(back, ahead), -1, 1)) / 2;
        var middle = (back + ahead).Unit();
        var apex = free.Inset / Math.Sin(half);
        if (apex >= free.Hub)
        {
            yield return hub + (apex * middle);
            yield break;
        }

        // From the apex along both sides until they are as far from the hub, measured along the middle.
        var along = (free.Hub - apex) / Math.Cos(half);
        yield return hub + (apex * middle) + (along * back);
        yield return hub + (apex * middle) + (along * ahead);
    }

    private static AddedPiece Pad(string cloth, Facet facet, ImmutableArray<Point2> outline)
    {
        var label = "A" + facet.Label[1..];
        return AddedPiece.Polygon(label, cloth, PieceKind.Pad, [.. outline.Select((corner, i) => (corner, new AddedEdge(string.Create(CultureInfo.InvariantCulture, $"{label}-{i + 1}"), IsSecond: false, EdgeRole.Raw, 0)))]);
    }
}
