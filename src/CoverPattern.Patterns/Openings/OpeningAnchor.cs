using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Finds the point of a shell at which an opening has its middle.</summary>
internal static class OpeningAnchor
{
    /// <summary>The point; null when there is none, with a fault.</summary>
    /// <param name="surface">The shell above its hem.</param>
    /// <param name="place">The wish.</param>
    /// <param name="at">Its place in the job, such as "openings[0]".</param>
    /// <param name="faults">Takes the fault.</param>
    internal static SurfacePoint? Find(ClippedShell surface, OpeningPlace place, string at, List<Fault> faults)
    {
        if (place.Above is { } above)
        {
            return ByHeight(surface, place, above, at, faults);
        }

        var shell = surface.Shell;
        var face = Enumerable.Range(0, shell.Faces.Length).Where(i => shell.Faces[i].Kind == FaceKind.Facet && string.Equals(shell.Faces[i].Label, place.Facet, StringComparison.Ordinal)).DefaultIfEmpty(-1).First();
        if (face < 0)
        {
            faults.Add(new Fault(at + ".facet", $"\"{place.Facet}\"", $"the label of a facet, \"{shell.Faces[0].Label}\" to \"{shell.Faces.Last(other => other.Kind == FaceKind.Facet).Label}\""));
            return null;
        }

        var up = FacePlane.UpOf(shell, face);
        var point = OpeningLayer.Incentre(shell.Faces[face].Chart) + (place.Right.Millimetres * (-1 * up.QuarterTurned())) + (place.Up.Millimetres * up);
        if (surface.Of(face) is { } clip && Depth(clip, point) >= 0)
        {
            return new SurfacePoint(face, point);
        }

        faults.Add(new Fault(at + ".facet", FormattableString.Invariant($"\"{place.Facet}\" with right {place.Right.Millimetres:0.#} mm and up {place.Up.Millimetres:0.#} mm"), "a middle that lies in that facet, above the finished edge: name the facet it lies in, or move it"));
        return null;
    }

    /// <summary>Where a level line from the upright axis meets the outermost facet.</summary>
    private static SurfacePoint? ByHeight(ClippedShell surface, OpeningPlace place, Measure above, string at, List<Fault> faults)
    {
        var (sin, cos) = Math.SinCos(place.Towards * Math.PI / 180);
        var (from, along) = (new Point3(0, 0, above.Millimetres), new Point3(cos, sin, 0));
        var found = surface.Faces.Where(clip => surface.Shell.Faces[clip.Face].Kind == FaceKind.Facet).Select(clip => Meet(surface, clip, from, along)).Where(hit => hit.On > 0).ToArray();
        if (found.Length > 0)
        {
            var hit = found.MaxBy(entry => entry.On);
            return new SurfacePoint(hit.Face, hit.At);
        }

        var top = surface.Shell.Nodes.Max(node => node.Position.Z);
        faults.Add(new Fault(at + ".above", above.Typed, FormattableString.Invariant($"a height at which there is a facet in that direction: the cover's top is {top:0} mm above the deck")));
        return null;
    }

    private static (double On, int Face, Point2 At) Meet(ClippedShell surface, FaceClip clip, Point3 from, Point3 along)
    {
        var plane = FacePlane.Of(surface.Shell, clip.Face);
        var slope = Point3.Dot(plane.Normal, along);
        if (slope <= 0)
        {
            return default;
        }

        var on = Point3.Dot(plane.Normal, plane.Origin - from) / slope;
        var at = plane.ToChart(from + (on * along));
        return Depth(clip, at) >= 0 ? (on, clip.Face, at) : default;
    }

    /// <summary>Least distance from the edges of a clipped face to a point inside; negative outside.</summary>
    internal static double Depth(FaceClip clip, Point2 point) =>
        clip.Corners.Select((corner, i) => Point2.Cross((clip.After(i) - corner).Unit(), point - corner)).Min();
}
