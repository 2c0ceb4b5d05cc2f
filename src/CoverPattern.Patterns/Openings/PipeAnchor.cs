using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Finds where the middle line of a pipe meets the cover, and which way it runs.</summary>
internal static class PipeAnchor
{
    // A facet flatter to the pipe than this (cosine; 75 degrees) is not met: its hole would be four times as long as wide.
    internal const double LeastSeen = 0.26;

    // A direction shorter than this is none: rounding of double arithmetic.
    private const double NoDirection = 1e-9;

    /// <summary>The pipe's middle line and the facet that it meets; null when it meets none, with a fault.</summary>
    /// <param name="surface">The shell above its hem.</param>
    /// <param name="place">The wish.</param>
    /// <param name="at">Its place in the job, such as "pipes[0]".</param>
    /// <param name="faults">Takes the fault.</param>
    internal static (PipeAxis Axis, SurfacePoint Foot)? Find(ClippedShell surface, PipePlace place, string at, List<Fault> faults)
    {
        var found = place.Plan is { } plan
            ? OnPlan(surface, (plan.X.Millimetres, plan.Y.Millimetres), at, faults)
            : OpeningAnchor.Find(surface, new OpeningPlace(place.Facet, place.Right, place.Up) { Above = place.Above, Towards = place.Towards }, at, faults);
        if (found is not { } foot)
        {
            return null;
        }

        var face = FacePlane.Of(surface.Shell, foot.Face);
        var outward = Outward(place, face);
        var seen = Point3.Dot(outward, face.Normal);
        if (double.IsNaN(seen) || seen < LeastSeen)
        {
            faults.Add(new Fault(
                at,
                FormattableString.Invariant($"a {Words(place.Run)} pipe through facet {surface.Shell.Faces[foot.Face].Label}, along which it runs under {90 - (Math.Acos(Math.Clamp(double.IsNaN(seen) ? 0 : seen, -1, 1)) * 180 / Math.PI):0} degrees"),
                FormattableString.Invariant($"at least {90 - (Math.Acos(LeastSeen) * 180 / Math.PI):0} degrees: {(place.Run == PipeRun.Vertical ? "a facet nearer to the top, or a level pipe" : "a facet nearer to the deck, or a vertical pipe")}")));
            return null;
        }

        var across = Falling(place.Run, outward, face);
        return (new PipeAxis(face.ToSpace(foot.At), across, Point3.Cross(outward, across)), foot);
    }

    private static string Words(PipeRun run) => run.ToString().ToLower(CultureInfo.InvariantCulture);

    private static Point3 Outward(PipePlace place, FacePlane face)
    {
        if (place.Run == PipeRun.Vertical)
        {
            return new Point3(0, 0, 1);
        }

        if (place.Above is not null)
        {
            var (sin, cos) = Math.SinCos(place.Towards * Math.PI / 180);
            return new Point3(cos, sin, 0);
        }

        return face.Normal.Plan.Length <= NoDirection ? new Point3(double.NaN, double.NaN, double.NaN) : new Point3(face.Normal.X, face.Normal.Y, 0).Unit();
    }

    /// <summary>Square to the pipe, the way in which the facet falls away from its outer end; where it does not, to the front or up.</summary>
    private static Point3 Falling(PipeRun run, Point3 outward, FacePlane face)
    {
        var across = face.Normal - (Point3.Dot(face.Normal, outward) * outward);
        return across.Length > NoDirection ? across.Unit() : run == PipeRun.Vertical ? new Point3(1, 0, 0) : new Point3(0, 0, 1);
    }

    /// <summary>Where an upright line meets the highest facet. The plan is the frame's: the cover is larger by its ease.</summary>
    private static SurfacePoint? OnPlan(ClippedShell surface, (double X, double Y) plan, string at, List<Fault> faults)
    {
        var line = (1 + surface.Shell.Ease) * new Point3(plan.X, plan.Y, 0);
        var hits = surface.Faces.Where(clip => surface.Shell.Faces[clip.Face].Kind == FaceKind.Facet).Select(clip => Meet(surface, clip, line)).OfType<(double Height, SurfacePoint At)>().ToArray();
        if (hits.Length > 0)
        {
            return hits.MaxBy(hit => hit.Height).At;
        }

        faults.Add(new Fault(at + ".x", FormattableString.Invariant($"x {plan.X:0.#} mm, y {plan.Y:0.#} mm"), "a place under the cover: x from the deck's centre to the front, y to the left of that"));
        return null;
    }

    private static (double Height, SurfacePoint At)? Meet(ClippedShell surface, FaceClip clip, Point3 line)
    {
        var plane = FacePlane.Of(surface.Shell, clip.Face);
        if (plane.Normal.Z <= 0)
        {
            return null;
        }

        var height = Point3.Dot(plane.Normal, plane.Origin - line) / plane.Normal.Z;
        var at = plane.ToChart(line + new Point3(0, 0, height));
        return OpeningAnchor.Depth(clip, at) >= 0 ? (height, new SurfacePoint(clip.Face, at)) : null;
    }
}
