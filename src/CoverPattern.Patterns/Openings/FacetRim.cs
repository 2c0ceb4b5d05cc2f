using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Lays the rim of whole facets inset by a margin.</summary>
/// <remarks>
/// Each side of the rim runs beside one edge of the group, at the margin from it, straight in the faces laid out beside that edge's own.
/// Two sides meet on the line that halves the cloth's angle at the hub between their edges, at margin / sin(angle / 2) from it
/// (own derivation): so the rim is exact whatever hubs lie inside.
/// </remarks>
internal sealed class FacetRim
{
    // A corner this near to an edge lies on it: rounding of double arithmetic at 100 m, millimetres.
    private const double OnEdge = 1e-6;

    private readonly ClippedShell surface;
    private readonly double margin;
    private readonly HashSet<int> faces;

    private FacetRim(ClippedShell surface, IEnumerable<int> faces, double margin) => (this.surface, this.faces, this.margin) = (surface, [.. faces], margin);

    /// <summary>The rim; without one the stop says why, <see cref="WalkStop.AtBorder"/> when the facets have more than one border.</summary>
    internal static RimLaying Lay(ClippedShell surface, IEnumerable<int> faces, double margin) => new FacetRim(surface, faces, margin).Lay();

    private RimLaying Lay()
    {
        var sides = Border();
        if (sides.IsEmpty)
        {
            return Refused(WalkStop.AtBorder, faces.First());
        }

        var rim = ImmutableArray<RimStretch>.Empty;
        for (var i = 0; i < sides.Length; i++)
        {
            var (side, stop) = Side(sides[i], AngleBetween(sides[(i + sides.Length - 1) % sides.Length], sides[i]), AngleBetween(sides[i], sides[(i + 1) % sides.Length]));
            if (stop is not null)
            {
                return stop;
            }

            if (rim.IsEmpty)
            {
                rim = side;
                continue;
            }

            if (rim[^1].Face == side[0].Face)
            {
                rim = RimLayer.Joined(rim, side);
                continue;
            }

            if (Corner(rim[^1], side[0]) is not { } corner)
            {
                return Refused(WalkStop.AtCorner, side[0].Face);
            }

            rim = [.. rim[..^1], corner.End, corner.Begin, .. side[1..]];
        }

        if (rim[0].Face == rim[^1].Face)
        {
            return RimLayer.Checked(surface, new RimLaying(RimLayer.Closed(rim), WalkStop.Arrived, string.Empty, 0));
        }

        return Corner(rim[^1], rim[0]) is { } last
            ? RimLayer.Checked(surface, new RimLaying([last.Begin, .. rim[1..^1], last.End], WalkStop.Arrived, string.Empty, 0))
            : Refused(WalkStop.AtCorner, rim[0].Face);
    }

    /// <summary>Where two sides meet on the very edge between their last faces: the corner is the crossing; null when it is not on it.</summary>
    private (RimStretch End, RimStretch Begin)? Corner(RimStretch end, RimStretch begin)
    {
        var edge = surface.Shell.Faces[end.Face].Edges.Intersect(surface.Shell.Faces[begin.Face].Edges).DefaultIfEmpty(-1).First();
        if (edge < 0)
        {
            return null;
        }

        var (from, to) = surface.Ends(end.Face, edge);
        var crossing = new LinePoint(edge, -1, Point2.Dot(end.Points[^1] - from, to - from) / Point2.Dot(to - from, to - from));
        var (here, there) = (surface.Place(end.Face, crossing), surface.Place(begin.Face, crossing));
        return Math.Max(Point2.Distance(here, end.Points[^1]), Point2.Distance(there, begin.Points[0])) > OnEdge
            ? null
            : (end with { Points = [.. end.Points[..^1], here], Leave = crossing }, begin with { Points = [there, .. begin.Points[1..]], Enter = crossing });
    }

    private RimLaying Refused(WalkStop stop, int face) => new([], stop, surface.Shell.Faces[face].Label, 0);

    /// <summary>The sides round the group, counter-clockwise; none when they are not one ring.</summary>
    private ImmutableArray<(int Face, int At)> Border()
    {
        var border = faces.Order().SelectMany(face => Enumerable.Range(0, surface.Shell.Faces[face].Edges.Length).Select(at => (Face: face, At: at))).Where(side => !IsInner(side)).ToArray();
        var ring = ImmutableArray.CreateBuilder<(int Face, int At)>();
        var side = border[0];
        do
        {
            ring.Add(side);
            side = Following(side);
            while (IsInner(side))
            {
                side = Following(Opposite(side));
            }
        }
        while (side != border[0] && ring.Count <= border.Length);

        return ring.Count == border.Length ? ring.ToImmutable() : [];
    }

    private bool IsInner((int Face, int At) side) => faces.Contains(Opposite(side).Face);

    private (int Face, int At) Following((int Face, int At) side) => (side.Face, (side.At + 1) % surface.Shell.Faces[side.Face].Edges.Length);

    private (int Face, int At) Opposite((int Face, int At) side)
    {
        var edge = surface.Shell.Faces[side.Face].Edges[side.At];
        var line = surface.Shell.Edges[edge];
        var other = line.Left == side.Face ? line.Right : line.Left;
        return (other, other < 0 ? -1 : surface.Shell.Faces[other].Edges.IndexOf(edge));
    }

    /// <summary>Angle of the group's cloth at the hub between two sides, radians.</summary>
    private double AngleBetween((int Face, int At) side, (int Face, int At) next)
    {
        var angle = 0.0;
        for (var at = Following(side); ; at = Following(Opposite(at)))
        {
            angle += AngleAt(at);
            if (at == next)
            {
                return angle;
            }
        }
    }

    private double AngleAt((int Face, int At) corner)
    {
        var chart = surface.Shell.Faces[corner.Face].Chart;
        var (next, before) = (chart[(corner.At + 1) % chart.Length] - chart[corner.At], chart[(corner.At + chart.Length - 1) % chart.Length] - chart[corner.At]);
        return Math.Atan2(Point2.Cross(next, before), Point2.Dot(next, before));
    }

    /// <summary>One side of the rim, walked from its middle both ways.</summary>
    private (ImmutableArray<RimStretch> Side, RimLaying? Stop) Side((int Face, int At) side, double angleBefore, double angleAfter)
    {
        var chart = surface.Shell.Faces[side.Face].Chart;
        var (from, to) = (chart[side.At], chart[(side.At + 1) % chart.Length]);
        var along = (to - from).Unit();
        var start = from + (margin / Math.Sin(angleBefore / 2) * Turned(along, angleBefore / 2));
        var end = to + (margin / Math.Sin(angleAfter / 2) * Turned(-1 * along, -angleAfter / 2));
        var middle = Point2.Between(start, end, 0.5);
        if (surface.Of(side.Face) is not { } clip || Point2.Dot(end - start, along) <= 0 || !Holds(clip, middle))
        {
            return ([], Refused(WalkStop.AtBorder, side.Face));
        }

        var plane = PlaneMap.About(middle, new Point2(0, 1));
        var (forward, back) = (new SurfaceWalk(surface, side.Face, middle, plane, null), new SurfaceWalk(surface, side.Face, middle, plane, null));
        var (ahead, behind) = (forward.Go(plane.ToPlane(end)), back.Go(plane.ToPlane(start)));
        return ahead != WalkStop.Arrived || behind != WalkStop.Arrived
            ? ([], Refused(ahead != WalkStop.Arrived ? ahead : behind, side.Face))
            : (Straight(RimLayer.Joined([.. back.Way.Reverse().Select(stretch => stretch.Reversed)], forward.Way), side.Face, middle), null);
    }

    /// <summary>The point from which both ways were walked is no corner.</summary>
    private static ImmutableArray<RimStretch> Straight(ImmutableArray<RimStretch> side, int face, Point2 middle) =>
        [.. side.Select(stretch => stretch.Face == face && stretch.Points.Length > 2 ? stretch with { Points = stretch.Points.Remove(middle) } : stretch)];

    private static bool Holds(FaceClip clip, Point2 point) =>
        clip.Corners.Select((corner, i) => Point2.Cross(clip.After(i) - corner, point - corner)).All(left => left > 0);

    private static Point2 Turned(Point2 direction, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new Point2((cos * direction.X) - (sin * direction.Y), (sin * direction.X) + (cos * direction.Y));
    }
}
