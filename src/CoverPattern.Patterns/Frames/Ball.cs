using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>A whole divided solid on the sphere of radius 1, of which a part becomes a frame.</summary>
/// <remarks>Rings of its hubs count from the top: a hub's ring is the number of struts between it and the highest hubs.</remarks>
public sealed class Ball
{
    private const double Alike = 1e-9;

    private readonly int[] rings;

    private Ball(ImmutableArray<Point3> points, ImmutableArray<ImmutableArray<int>> facets)
    {
        (Points, Facets) = (points, facets);
        rings = RingsFromTop();
        var order = Enumerable.Range(0, points.Length).OrderBy(i => rings[i]).ThenBy(i => FrameSketch.Bearing(points[i])).ToArray();
        var labels = RowLabels.Make("T", [.. order.Select(i => rings[i])]);
        Names = [.. order.Zip(labels).OrderBy(pair => pair.First).Select(pair => pair.Second)];
    }

    /// <summary>Hub centres.</summary>
    public ImmutableArray<Point3> Points { get; }

    /// <summary>Rings of three hubs, counter-clockwise seen from outside.</summary>
    public ImmutableArray<ImmutableArray<int>> Facets { get; }

    /// <summary>Names of the hubs: ring from the top and position counter-clockwise from the front, such as "T3.07".</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>Most rows of facets that a cut may keep.</summary>
    public int MostRows => rings.Max() - 1;

    /// <summary>Divides the solid that a wish names.</summary>
    /// <param name="wish">Family, frequency, division and what is up are read.</param>
    public static Ball Divide(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentOutOfRangeException.ThrowIfLessThan(wish.Frequency, 1);
        var faces = wish.Family == FrameFamily.Octahedron ? Octahedron.Faces() : Icosahedron.Faces();
        var place = HubPlacements.Of(wish.Division, wish.Frequency);
        var (points, facets) = wish.Division == FrameDivision.ClassTwo
            ? SphereGrid.DivideAcross(faces, wish.Frequency, place)
            : SphereGrid.DivideAlong(faces, wish.Frequency, place);
        return new Ball(Turned(points, faces[0], wish.Up), facets);
    }

    /// <summary>The facets above a cut, or null where there is no such cut.</summary>
    /// <param name="wish">Rows, or hubs along the cut.</param>
    /// <param name="trouble">Why there is none, in a few words.</param>
    public ImmutableArray<ImmutableArray<int>>? Above(FrameWish wish, out string trouble)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return wish.CutHubs.IsDefaultOrEmpty ? AboveRows(wish.Rows, out trouble) : AboveHubs(wish.CutHubs, out trouble);
    }

    private ImmutableArray<ImmutableArray<int>>? AboveRows(int rows, out string trouble)
    {
        ImmutableArray<ImmutableArray<int>> kept = [.. Facets.Where(facet => facet.All(hub => rings[hub] <= rows))];
        trouble = kept.IsEmpty ? "no facet lies above it" : IsDisc(kept) ? "" : "the facets above it do not end on one ring of hubs";
        return trouble.Length == 0 ? kept : null;
    }

    private ImmutableArray<ImmutableArray<int>>? AboveHubs(ImmutableArray<string> names, out string trouble)
    {
        trouble = Names.Intersect(names, StringComparer.Ordinal).Count() < names.Length
            ? $"\"{names.FirstOrDefault(name => !Names.Contains(name)) ?? names.GroupBy(name => name, StringComparer.Ordinal).First(group => group.Count() > 1).Key}\" is no hub of the ball, or named twice"
            : "";
        if (trouble.Length > 0)
        {
            return null;
        }

        var loop = names.Select(name => Names.IndexOf(name)).ToArray();
        var struts = Facets.SelectMany(facet => facet.Select((hub, i) => (hub, facet[(i + 1) % facet.Length]))).ToHashSet();
        var cut = loop.Select((hub, i) => (From: hub, To: loop[(i + 1) % loop.Length])).ToArray();
        var gap = Array.FindIndex(cut, pair => !struts.Contains(pair));
        if (gap >= 0)
        {
            trouble = $"no strut runs from {Names[cut[gap].From]} to {Names[cut[gap].To]}";
            return null;
        }

        var kept = Flood([.. cut.Concat(cut.Select(pair => (pair.To, pair.From)))]);
        trouble = kept.Length < Facets.Length && IsDisc(kept) ? "" : "the hubs do not run once round the ball";
        return trouble.Length == 0 ? kept : null;
    }

    /// <summary>The facets that can be reached from the top without crossing the cut.</summary>
    private ImmutableArray<ImmutableArray<int>> Flood(HashSet<(int, int)> cut)
    {
        var beyond = new Dictionary<(int, int), int>();
        foreach (var (facet, i) in Facets.Select((facet, i) => (facet, i)))
        {
            for (var at = 0; at < 3; at++)
            {
                beyond.Add((facet[(at + 1) % 3], facet[at]), i);
            }
        }

        var start = Enumerable.Range(0, Facets.Length).MaxBy(i => Facets[i].Sum(hub => Points[hub].Z));
        var reached = new SortedSet<int> { start };
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out var facet))
        {
            for (var at = 0; at < 3; at++)
            {
                var edge = (Facets[facet][at], Facets[facet][(at + 1) % 3]);
                if (!cut.Contains(edge) && reached.Add(beyond[edge]))
                {
                    queue.Enqueue(beyond[edge]);
                }
            }
        }

        return [.. reached.Select(i => Facets[i])];
    }

    /// <summary>One border, simple, and Euler's hubs - struts + facets = 1.</summary>
    private static bool IsDisc(ImmutableArray<ImmutableArray<int>> facets)
    {
        var struts = facets.SelectMany(facet => facet.Select((hub, i) => (Math.Min(hub, facet[(i + 1) % 3]), Math.Max(hub, facet[(i + 1) % 3])))).Distinct().Count();
        return MeshLoops.Find(facets).Length == 1 && facets.SelectMany(facet => facet).Distinct().Count() - struts + facets.Length == 1;
    }

    private int[] RingsFromTop()
    {
        var top = Points.Max(point => point.Z);
        var neighbours = Points.Select(_ => new List<int>()).ToArray();
        foreach (var facet in Facets)
        {
            for (var at = 0; at < 3; at++)
            {
                neighbours[facet[at]].Add(facet[(at + 1) % 3]);
            }
        }

        var found = Points.Select(point => point.Z > top - Alike ? 0 : -1).ToArray();
        var queue = new Queue<int>(Enumerable.Range(0, found.Length).Where(hub => found[hub] == 0));
        while (queue.TryDequeue(out var hub))
        {
            foreach (var next in neighbours[hub].Where(next => found[next] < 0))
            {
                found[next] = found[hub] + 1;
                queue.Enqueue(next);
            }
        }

        return found;
    }

    /// <summary>Turns the ball so that the middle of an edge or face comes to the top; the solid's second corner stays towards the front.</summary>
    private static ImmutableArray<Point3> Turned(ImmutableArray<Point3> points, SolidFace face, FrameUp up)
    {
        if (up == FrameUp.Vertex)
        {
            return points;
        }

        var upward = (up == FrameUp.Edge ? face.A.Position + face.B.Position : face.A.Position + face.B.Position + face.C.Position).Unit();
        var front = (face.B.Position - (Point3.Dot(face.B.Position, upward) * upward)).Unit();
        var side = Point3.Cross(upward, front);
        return [.. points.Select(point => new Point3(Point3.Dot(point, front), Point3.Dot(point, side), Point3.Dot(point, upward)))];
    }
}
