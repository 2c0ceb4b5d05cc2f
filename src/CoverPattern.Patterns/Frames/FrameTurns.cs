using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>Finds the turns about the upright axis that map a frame onto itself, by matching hubs and facets.</summary>
public static class FrameTurns
{
    // Hubs this near, as a share of the frame's size, count as one place: far above rounding, far below any strut.
    private const double SamePlace = 1e-6;

    /// <summary>All such turns, the one by nothing first, in order of their angle.</summary>
    /// <param name="frame">Any frame about the z axis.</param>
    public static ImmutableArray<FrameTurn> Find(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);

        var size = frame.Hubs.Max(hub => hub.Position.Length);
        var offAxis = frame.Hubs.Where(hub => hub.Position.Plan.Length > SamePlace * size).ToArray();
        if (offAxis.Length == 0)
        {
            return [new FrameTurn(0, [.. frame.Hubs.Select((_, i) => i)], [.. frame.Facets.Select((_, i) => i)])];
        }

        // Every turn maps the smallest ring onto itself, so its first hub tells all turns that there can be.
        var ring = offAxis.GroupBy(hub => hub.Ring).OrderBy(group => group.Count()).ThenBy(group => group.Key).First().ToArray();
        return [.. ring.Select(hub => Angle(ring[0].Position.Plan, hub.Position.Plan)).Order().Select(angle => TurnBy(frame, angle, SamePlace * size)).OfType<FrameTurn>()];
    }

    private static double Angle(Point2 from, Point2 to)
    {
        var angle = Math.Atan2(Point2.Cross(from, to), Point2.Dot(from, to));
        return angle < 0 ? angle + (2 * Math.PI) : angle;
    }

    private static FrameTurn? TurnBy(Frame frame, double angle, double samePlace)
    {
        var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
        var hubs = ImmutableArray.CreateBuilder<int>(frame.Hubs.Length);
        foreach (var hub in frame.Hubs)
        {
            var at = new Point3((cosine * hub.Position.X) - (sine * hub.Position.Y), (sine * hub.Position.X) + (cosine * hub.Position.Y), hub.Position.Z);
            var found = Enumerable.Range(0, frame.Hubs.Length).FirstOrDefault(i => Point3.Distance(frame.Hubs[i].Position, at) <= samePlace, -1);
            if (found < 0)
            {
                return null;
            }

            hubs.Add(found);
        }

        var mapped = hubs.ToImmutable();
        var facets = FacetsOf(frame, mapped);
        return facets is null ? null : new FrameTurn(angle, mapped, facets.Value);
    }

    private static ImmutableArray<int>? FacetsOf(Frame frame, ImmutableArray<int> hubs)
    {
        static string Key(IEnumerable<int> corners) => string.Join(',', corners.Order());
        var byHubs = frame.Facets.Select((facet, i) => (Key: Key(facet.Hubs), i)).ToDictionary(entry => entry.Key, entry => entry.i, StringComparer.Ordinal);
        var facets = frame.Facets.Select(facet => byHubs.GetValueOrDefault(Key(facet.Hubs.Select(hub => hubs[hub])), -1)).ToImmutableArray();
        return facets.Contains(-1) ? null : facets;
    }
}
