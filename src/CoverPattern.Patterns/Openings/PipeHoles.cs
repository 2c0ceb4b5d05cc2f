using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>The holes that pipes through the cover ask of a shell inside it: beyond the clear distance, about the same middle line.</summary>
internal static class PipeHoles
{
    // Cloth turned under must keep out of the clear distance too (own choice), millimetres.
    private const double Beyond = 20;
    private const double TurnUnder = 15;

    /// <summary>One region a pipe.</summary>
    /// <param name="surface">The inner shell above its hem.</param>
    /// <param name="pipes">The pipes as laid on the cover.</param>
    /// <param name="ease">By which the cover is larger.</param>
    /// <param name="faults">Takes what cannot be cut.</param>
    internal static ImmutableArray<Region> Lay(ClippedShell surface, ImmutableArray<LaidPipe> pipes, double ease, List<Fault> faults) =>
        [.. pipes.Select(pipe => Lay(surface, pipe, ease, faults)).OfType<Region>()];

    private static Region? Lay(ClippedShell surface, LaidPipe pipe, double ease, List<Fault> faults)
    {
        var line = 1 / (1 + ease) * pipe.Axis.Foot;
        var foot = surface.Faces.Where(clip => surface.Shell.Faces[clip.Face].Kind == FaceKind.Facet).Select(clip => Meet(surface, clip, line, pipe.Axis.Outward)).OfType<(double Away, SurfacePoint At)>().OrderBy(hit => hit.Away).Select(hit => (SurfacePoint?)hit.At).FirstOrDefault();
        var laid = foot is { } at ? Lay(surface, pipe, at) : null;
        if (foot is null || laid is not { IsLaid: true })
        {
            faults.Add(new Fault(PipeLayer.PlaceOf(pipe.Entry), $"the hole in the liner for {pipe.Label} runs off it{(laid is null ? string.Empty : ", at " + laid.Where)}", "a pipe whose clear distance lies on the liner: another place"));
            return null;
        }

        var region = new Region(string.Create(CultureInfo.InvariantCulture, $"J{pipe.Entry + 1}"), PipeLayer.Purpose, foot.Value, FacePlane.UpOf(surface.Shell, foot.Value.Face), TurnUnder, laid.Rim);
        if (region.ReachesHem || !HubsInside.Of(surface, region).IsEmpty)
        {
            faults.Add(new Fault(PipeLayer.PlaceOf(pipe.Entry), $"the hole in the liner for {pipe.Label} goes round a hub or to its edge", "a pipe clear of hubs and edge: another place"));
            return null;
        }

        return region;
    }

    private static RimLaying Lay(ClippedShell surface, LaidPipe pipe, SurfacePoint foot)
    {
        var view = pipe.Axis.View with { Origin = FacePlane.Of(surface.Shell, foot.Face).ToSpace(foot.At) };
        return RimLayer.Lay(surface, foot, PlaneMap.Seen(view, FacePlane.Of(surface.Shell, foot.Face)), PipeOutlines.Circle(pipe.Wish.ClearRadius + Beyond), face =>
        {
            var map = PlaneMap.Seen(view, FacePlane.Of(surface.Shell, face));
            return map.Squeeze >= PipeAnchor.LeastSeen && surface.Shell.Faces[face].Kind == FaceKind.Facet ? map : null;
        });
    }

    private static (double Away, SurfacePoint At)? Meet(ClippedShell surface, FaceClip clip, Point3 line, Point3 along)
    {
        var plane = FacePlane.Of(surface.Shell, clip.Face);
        var slope = Point3.Dot(plane.Normal, along);
        if (slope <= 0)
        {
            return null;
        }

        var away = Point3.Dot(plane.Normal, plane.Origin - line) / slope;
        var at = plane.ToChart(line + (away * along));
        return OpeningAnchor.Depth(clip, at) >= 0 ? (Math.Abs(away), new SurfacePoint(clip.Face, at)) : null;
    }
}
