using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>A walk over a shell along lines that are straight in a plane: faces are laid out one beside the other as they come, or seen from one side.</summary>
internal sealed class SurfaceWalk
{
    // A line may not pass nearer to a corner: a millimetre is the width of a chalk line.
    private const double LeastFromCorner = 1;

    // Points nearer than this are one: rounding of double arithmetic at 100 m, millimetres.
    private const double OnePoint = 1e-7;

    private readonly ClippedShell surface;
    private readonly Func<int, PlaneMap?>? seen;
    private readonly List<RimStretch> stretches = [];
    private readonly List<Point2> points = [];
    private LinePoint? entered;

    /// <param name="surface">The shell above its hem.</param>
    /// <param name="face">Where the walk begins.</param>
    /// <param name="at">The place in its chart.</param>
    /// <param name="map">The plane of that face.</param>
    /// <param name="seen">The plane of every face where the line is projected, null for a face that is not seen; null to carry it.</param>
    internal SurfaceWalk(ClippedShell surface, int face, Point2 at, PlaneMap map, Func<int, PlaneMap?>? seen)
    {
        (this.surface, Face, At, Map, this.seen) = (surface, face, at, map, seen);
        points.Add(at);
    }

    internal int Face { get; private set; }

    internal Point2 At { get; private set; }

    internal PlaneMap Map { get; private set; }

    /// <summary>Index of the clipped face's corner at which the walk stopped.</summary>
    internal int StoppedAt { get; private set; }

    /// <summary>What was walked so far, face by face; the last stretch ends where the walk is.</summary>
    internal ImmutableArray<RimStretch> Way => [.. stretches, .. points.Count > 0 ? [new RimStretch(Face, [.. points], entered, null)] : Array.Empty<RimStretch>()];

    /// <summary>A walk that goes on from here with nothing behind it.</summary>
    internal SurfaceWalk Anew() => new(surface, Face, At, Map, seen);

    /// <summary>Goes straight to a point of the plane.</summary>
    internal WalkStop Go(Point2 target)
    {
        // Each turn leaves a face for good: the line is straight where the faces lie side by side.
        for (var turn = 0; turn <= 2 * surface.Faces.Length; turn++)
        {
            var clip = surface.Of(Face)!;
            var end = Map.ToChart(target);
            if (Exit(clip, end) is not { } exit)
            {
                Add(end);
                At = end;
                return WalkStop.Arrived;
            }

            if (Cross(clip, exit) is var stop and not WalkStop.Arrived)
            {
                return stop;
            }
        }

        throw new InvalidOperationException("A walk over the shell does not end.");
    }

    /// <summary>The edge through which the way to a point leaves the face, and the share of the edge; null when it stays inside.</summary>
    private (int Edge, double Share)? Exit(FaceClip clip, Point2 end)
    {
        (double On, int Edge, double Share)? first = null;
        for (var i = 0; i < clip.Corners.Length; i++)
        {
            var (from, step) = (clip.Corners[i], clip.After(i) - clip.Corners[i]);
            var (here, there) = (Point2.Cross(step, At - from), Point2.Cross(step, end - from));
            // An end on the edge itself is inside: rounding must not send the walk to and fro over it.
            if (there >= -OnePoint * step.Length || there >= here)
            {
                continue;
            }

            var on = Math.Max(0, here / (here - there));
            var share = Point2.Dot(Point2.Between(At, end, on) - from, step) / Point2.Dot(step, step);
            if (share >= -OnePoint && share <= 1 + OnePoint && (first is null || on < first.Value.On))
            {
                first = (on, i, share);
            }
        }

        return first is { } found ? (found.Edge, found.Share) : null;
    }

    private WalkStop Cross(FaceClip clip, (int Edge, double Share) exit)
    {
        var length = Point2.Distance(clip.Corners[exit.Edge], clip.After(exit.Edge));
        if (Math.Min(exit.Share, 1 - exit.Share) * length < LeastFromCorner)
        {
            StoppedAt = exit.Share < 0.5 ? exit.Edge : (exit.Edge + 1) % clip.Corners.Length;
            return WalkStop.AtCorner;
        }

        var (edge, beyond) = (clip.ShellEdges[exit.Edge], surface.Beyond(Face, clip.ShellEdges[exit.Edge]));
        if (beyond < 0 && !IsHem(clip, exit.Edge))
        {
            return WalkStop.AtBorder;
        }

        var next = beyond < 0 ? Map : seen is null ? Map.After(surface.Laying(beyond, edge, Face)) : seen(beyond);
        if (next is null)
        {
            return WalkStop.TurnedAway;
        }

        var crossing = Record(clip, exit);
        Leave(crossing, surface.Place(Face, crossing));
        if (beyond < 0)
        {
            return WalkStop.AtHem;
        }

        (Face, Map, entered) = (beyond, next.Value, crossing);
        At = surface.Place(beyond, crossing);
        points.Add(At);
        return WalkStop.Arrived;
    }

    /// <summary>Where a face ends without another beyond it, on the finished edge or where what lay beyond was too narrow to keep.</summary>
    private bool IsHem(FaceClip clip, int edge) => clip.ShellEdges[edge] < 0
        || surface.Shell.Edges[clip.ShellEdges[edge]].Right >= 0
        || (surface.Shell.Nodes[surface.Shell.Edges[clip.ShellEdges[edge]].From].AboveHem <= 0 && surface.Shell.Nodes[surface.Shell.Edges[clip.ShellEdges[edge]].To].AboveHem <= 0);

    private LinePoint Record(FaceClip clip, (int Edge, double Share) exit)
    {
        var edge = clip.ShellEdges[exit.Edge];
        if (edge < 0)
        {
            return new LinePoint(-1, Face, exit.Share);
        }

        var (from, to) = surface.Ends(Face, edge);
        var on = Point2.Between(clip.Corners[exit.Edge], clip.After(exit.Edge), exit.Share) - from;
        return new LinePoint(edge, -1, Point2.Dot(on, to - from) / Point2.Dot(to - from, to - from));
    }

    private void Leave(LinePoint crossing, Point2 at)
    {
        Add(at);
        points[^1] = at;
        At = at;
        stretches.Add(new RimStretch(Face, [.. points], entered, crossing));
        points.Clear();
    }

    private void Add(Point2 point)
    {
        if (points.Count == 0 || Point2.Distance(points[^1], point) > OnePoint)
        {
            points.Add(point);
        }
    }
}
