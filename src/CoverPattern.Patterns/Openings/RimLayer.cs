using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays an outline on a shell: carried over edges at its exact size, or projected square to the plane it is drawn in.</summary>
/// <remarks>
/// Carried: the faces the outline walks over are laid out one beside the other, so that every straight piece stays straight and
/// keeps its length. Round a hub cloth does not lie flat, so an outline round one or more misses its beginning: by
/// 2 r sin(defect / 2) for a circle of radius r about one hub [own calculation]. Projected: every face is seen square to the plane of
/// the outline, so the rim closes by construction, and its sizes are measured on the surface.
/// </remarks>
internal static class RimLayer
{
    // A rim crosses a line at places at least this far apart: nothing can be sewn between nearer ones; millimetres.
    private const double LeastBetween = 1;

    // How well a carried rim must come back to its beginning, millimetres: far above rounding, far below any hub's gap.
    private const double Closure = 0.001;

    // The rim begins at a corner of the outline that lies farther than this from all lines, so that it ends in the face where it begins; millimetres.
    private const double ClearOfLines = 0.01;

    /// <summary>Lays an outline.</summary>
    /// <param name="surface">The shell above its hem.</param>
    /// <param name="centre">The point of the shell over which the outline's origin lies.</param>
    /// <param name="map">The plane of that face, in the outline's coordinates.</param>
    /// <param name="outline">Ring, counter-clockwise, first point not repeated.</param>
    /// <param name="seen">The plane of each face where it is projected; null to carry it.</param>
    internal static RimLaying Lay(
        ClippedShell surface, SurfacePoint centre, PlaneMap map, ImmutableArray<Point2> outline, Func<int, PlaneMap?>? seen)
    {
        var (first, start, stop) = Begin(surface, centre, map, outline, seen);
        if (start is null)
        {
            return stop;
        }

        var count = outline.Length;
        var forward = start.Anew();
        for (var i = 1; i <= count; i++)
        {
            var end = forward.Go(outline[(first + i) % count]);
            if (end == WalkStop.AtHem)
            {
                return Open(surface, start, forward, [.. Enumerable.Range(i, count - i).Select(k => outline[(first + k) % count])]);
            }

            if (end != WalkStop.Arrived)
            {
                return Refused(surface, forward, end);
            }
        }

        var gap = Gap(surface, start, forward);
        return gap <= Closure
            ? Checked(surface, new RimLaying(Closed(forward.Way), WalkStop.Arrived, string.Empty, 0))
            : new RimLaying([], WalkStop.Arrived, string.Empty, gap);
    }

    /// <summary>The first corner of the outline that can be reached straight from the centre and lies clear of all lines.</summary>
    private static (int First, SurfaceWalk? Start, RimLaying Stop) Begin(
        ClippedShell surface, SurfacePoint centre, PlaneMap map, ImmutableArray<Point2> outline, Func<int, PlaneMap?>? seen)
    {
        RimLaying? stop = null;
        for (var i = 0; i < outline.Length; i++)
        {
            var walk = new SurfaceWalk(surface, centre.Face, centre.At, map, seen);
            var end = walk.Go(outline[i]);
            if (end == WalkStop.Arrived && IsClear(surface, walk))
            {
                return (i, walk, Refused(surface, walk, end));
            }

            stop ??= Refused(surface, walk, end == WalkStop.Arrived ? WalkStop.AtCorner : end);
        }

        return (-1, null, stop!);
    }

    private static bool IsClear(ClippedShell surface, SurfaceWalk walk)
    {
        var clip = surface.Of(walk.Face)!;
        return clip.Corners.Select((corner, i) => Lines.Distance(corner, clip.After(i), walk.At)).Min() > ClearOfLines;
    }

    /// <summary>A rim that ran into the hem: from the same corner of the outline the other way round to the hem again.</summary>
    private static RimLaying Open(ClippedShell surface, SurfaceWalk start, SurfaceWalk forward, ImmutableArray<Point2> rest)
    {
        var back = start.Anew();
        for (var i = rest.Length - 1; i >= 0; i--)
        {
            var end = back.Go(rest[i]);
            if (end == WalkStop.AtHem)
            {
                // What is left of the outline must lie below the finished edge.
                var comesBack = rest[..(i + 1)].Any(point => IsAbove(surface, forward, point) && IsAbove(surface, back, point));
                return Checked(surface, new RimLaying(Joined([.. back.Way.Reverse().Select(stretch => stretch.Reversed)], forward.Way), WalkStop.Arrived, string.Empty, 0) { ComesBack = comesBack });
            }

            if (end != WalkStop.Arrived)
            {
                return Refused(surface, back, end);
            }
        }

        return Refused(surface, back, WalkStop.AtBorder);
    }

    /// <summary>Refuses a rim that only touches a line: what it cuts off there is nothing; tidies others.</summary>
    internal static RimLaying Checked(ClippedShell surface, RimLaying laid)
    {
        var crossings = laid.Rim.SelectMany(stretch => new[] { (Point: stretch.Enter, stretch.Face), (Point: stretch.Leave, stretch.Face) }).Where(entry => entry.Point is not null)
            .Select(entry => (Point: entry.Point!.Value, entry.Face)).DistinctBy(entry => entry.Point).ToArray();
        foreach (var line in crossings.GroupBy(entry => (entry.Point.Edge, entry.Point.Face)))
        {
            var places = line.Select(entry => surface.Place(line.First().Face, entry.Point)).ToArray();
            if (places.SelectMany((place, i) => places.Skip(i + 1).Select(other => Point2.Distance(place, other))).Any(gap => gap < LeastBetween))
            {
                return new RimLaying([], WalkStop.Touches, surface.Shell.Faces[line.First().Face].Label, 0);
            }
        }

        return laid with { Rim = [.. laid.Rim.Select(RimTidying.Tidy)] };
    }

    private static bool IsAbove(ClippedShell surface, SurfaceWalk walk, Point2 point) =>
        FaceHeight.Of(surface.Shell, surface.Shell.Faces[walk.Face]).At(walk.Map.ToChart(point)) > 0;

    private static RimLaying Refused(ClippedShell surface, SurfaceWalk walk, WalkStop stop)
    {
        var face = surface.Shell.Faces[walk.Face];
        var node = face.Chart.IndexOf(surface.Of(walk.Face)!.Corners[walk.StoppedAt]);
        return new RimLaying([], stop, stop == WalkStop.AtCorner && node >= 0 ? surface.Shell.Nodes[face.Nodes[node]].Label : face.Label, 0);
    }

    /// <summary>How far the end of a walk lies from its beginning, the faces round the end laid out from there.</summary>
    private static double Gap(ClippedShell surface, SurfaceWalk start, SurfaceWalk end)
    {
        var maps = new Dictionary<int, PlaneMap> { [end.Face] = end.Map };
        var order = new Queue<int>(maps.Keys);
        while (order.TryDequeue(out var face))
        {
            if (face == start.Face)
            {
                return Point2.Distance(maps[face].ToPlane(start.At), end.Map.ToPlane(end.At));
            }

            foreach (var edge in surface.Shell.Faces[face].Edges)
            {
                if (surface.Beyond(face, edge) is var beyond and >= 0 && maps.TryAdd(beyond, maps[face].After(surface.Laying(beyond, edge, face))))
                {
                    order.Enqueue(beyond);
                }
            }
        }

        return double.PositiveInfinity;
    }

    /// <summary>Joins the end of a closed walk to its beginning.</summary>
    internal static ImmutableArray<RimStretch> Closed(ImmutableArray<RimStretch> way)
    {
        if (way.Length == 1)
        {
            return [way[0] with { Points = way[0].Points[..^1] }];
        }

        return [way[^1] with { Points = [.. way[^1].Points, .. way[0].Points.Skip(1)], Leave = way[0].Leave }, .. way[1..^1]];
    }

    /// <summary>Joins two walks, the second of which begins where the first ends.</summary>
    internal static ImmutableArray<RimStretch> Joined(ImmutableArray<RimStretch> way, ImmutableArray<RimStretch> next) =>
        [.. way[..^1], next[0] with { Points = [.. way[^1].Points, .. next[0].Points.Skip(1)], Enter = way[^1].Enter }, .. next[1..]];
}
