using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>Hubs and facets that become a frame with rings, rows and labels.</summary>
internal sealed class FrameSketch
{
    // Edges whose slopes differ by less are equally level; lengths by less are equal: far over rounding, far under cutting.
    private const double Alike = 1e-6;

    private readonly ImmutableArray<Point3> points;
    private readonly ImmutableArray<ImmutableArray<int>> faces;
    private readonly ImmutableArray<ImmutableArray<int>> loops;
    private readonly ImmutableArray<int> foundation;
    private readonly int[] rings;

    /// <param name="points">Hub centres, z up; all of them in a face.</param>
    /// <param name="faces">Rings of hubs, counter-clockwise seen from outside; one border at least.</param>
    internal FrameSketch(ImmutableArray<Point3> points, ImmutableArray<ImmutableArray<int>> faces)
    {
        this.faces = faces;
        loops = MeshLoops.Find(faces);
        foundation = MeshLoops.Longest(loops, points);
        var deck = foundation.Min(hub => points[hub].Z);
        this.points = [.. points.Select(point => point with { Z = point.Z - deck })];
        rings = RingsFromBase();
    }

    /// <summary>Names of the hubs, where they have some already.</summary>
    internal ImmutableArray<string> Names { get; init; } = [];

    /// <summary>Edges that are no struts.</summary>
    internal ImmutableArray<(int From, int To)> Folds { get; init; } = [];

    /// <summary>Struts whose lengths differ by no more than this may be one class, millimetres.</summary>
    internal double ClassesMm { get; init; }

    internal Frame Finish()
    {
        // The base hubs as one walks round them; in plan they need not surround the middle.
        var places = new int[points.Length];
        var start = foundation.IndexOf(foundation.MinBy(hub => Bearing(points[hub])));
        foreach (var (hub, place) in foundation[start..].Concat(foundation[..start]).Select((hub, place) => (hub, place)))
        {
            places[hub] = place;
        }

        var order = Enumerable.Range(0, points.Length)
            .OrderBy(i => rings[i])
            .ThenBy(i => rings[i] == 0 ? places[i] : Bearing(points[i]))
            .ThenByDescending(i => points[i].Z)
            .ToArray();
        var newIndex = new int[order.Length];
        foreach (var (old, at) in order.Select((old, at) => (old, at)))
        {
            newIndex[old] = at;
        }

        var hubs = Hubs(order);
        var facets = Facets(newIndex, hubs);
        ImmutableArray<(int From, int To)> folds =
        [
            .. Folds.Select(fold => (A: newIndex[fold.From], B: newIndex[fold.To])).Select(fold => (Math.Min(fold.A, fold.B), Math.Max(fold.A, fold.B))).Order(),
        ];
        var (struts, classes) = StrutSorter.Sort(hubs, facets, folds, ClassesMm);
        return new Frame(hubs, struts, facets, classes, Renumbered(foundation, newIndex))
        {
            Folds = folds,
            Openings = [.. loops.Where(loop => loop != foundation).Select(loop => Renumbered(loop, newIndex)).OrderBy(loop => loop[0])],
        };
    }

    private static ImmutableArray<int> Renumbered(ImmutableArray<int> loop, int[] newIndex)
    {
        ImmutableArray<int> fresh = [.. loop.Select(hub => newIndex[hub])];
        var start = fresh.IndexOf(fresh.Min());
        return [.. fresh[start..], .. fresh[..start]];
    }

    /// <summary>Fewest struts between each hub and the base.</summary>
    private int[] RingsFromBase()
    {
        var neighbours = points.Select(_ => new List<int>()).ToArray();
        foreach (var face in faces)
        {
            for (var i = 0; i < face.Length; i++)
            {
                var (from, to) = (face[i], face[(i + 1) % face.Length]);
                neighbours[from].Add(to);
                neighbours[to].Add(from);
            }
        }

        var found = Enumerable.Repeat(-1, points.Length).ToArray();
        var queue = new Queue<int>(foundation);
        foreach (var hub in foundation)
        {
            found[hub] = 0;
        }

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

    private ImmutableArray<Hub> Hubs(int[] order)
    {
        var sorted = order.Select(i => rings[i]).ToArray();
        var labels = Names.IsEmpty ? RowLabels.Make("H", sorted) : [.. order.Select(i => Names[i])];
        return [.. order.Select((i, at) => new Hub(labels[at], sorted[at], points[i]))];
    }

    private ImmutableArray<Facet> Facets(int[] newIndex, ImmutableArray<Hub> hubs)
    {
        var kept = faces
            .Select(face => RingEdgeFirst([.. face.Select(corner => newIndex[corner])], hubs))
            .OrderBy(face => Row(face, hubs))
            .ThenBy(face => Bearing(Centre(face, hubs)))
            .ThenByDescending(face => Centre(face, hubs).Z)
            .ToArray();
        var labels = RowLabels.Make("F", [.. kept.Select(face => Row(face, hubs))]);
        return [.. kept.Select((face, at) => new Facet(labels[at], Row(face, hubs), face))];
    }

    /// <summary>
    /// Begins with the edge whose two hubs are in one ring; the warp will run along it. Of several such the most level,
    /// of equally level ones the longest, of equally long ones the lowest, then the first round from the front.
    /// </summary>
    private static ImmutableArray<int> RingEdgeFirst(ImmutableArray<int> face, ImmutableArray<Hub> hubs)
    {
        var sides = face.Select((corner, i) => (Start: i, From: hubs[corner], To: hubs[face[(i + 1) % face.Length]])).ToArray();
        var step = sides.Min(side => Math.Abs(side.From.Ring - side.To.Ring));
        sides = [.. sides.Where(side => Math.Abs(side.From.Ring - side.To.Ring) == step)];
        sides = Least(sides, side => Math.Abs(side.From.Position.Z - side.To.Position.Z) / Length(side.From, side.To), Alike);
        var alike = Alike * Length(sides[0].From, sides[0].To);
        sides = Least(sides, side => -Length(side.From, side.To), alike);
        sides = Least(sides, side => side.From.Position.Z + side.To.Position.Z, alike);
        var start = sides.MinBy(side => Bearing(Point3.Between(side.From.Position, side.To.Position, 0.5))).Start;
        return [.. face[start..], .. face[..start]];
    }

    private static double Length(Hub from, Hub to) => Point3.Distance(from.Position, to.Position);

    private static T[] Least<T>(T[] items, Func<T, double> measure, double alike)
    {
        var least = items.Min(measure);
        return [.. items.Where(item => measure(item) <= least + alike)];
    }

    private static int Row(ImmutableArray<int> face, ImmutableArray<Hub> hubs) => 1 + face.Min(hub => hubs[hub].Ring);

    private static Point3 Centre(ImmutableArray<int> face, ImmutableArray<Hub> hubs) =>
        (1.0 / face.Length) * face.Aggregate(default(Point3), (sum, hub) => sum + hubs[hub].Position);

    /// <summary>Angle from the front, 0 to 2 pi counter-clockwise, in whole hairs, so that places one above the other have the same; a hair before the front counts as the front, and so does the middle.</summary>
    internal static double Bearing(Point3 position)
    {
        const double hair = 1e-9;
        // In the middle only rounding would tell a direction.
        if (Math.Abs(position.X) + Math.Abs(position.Y) <= hair * Math.Abs(position.Z))
        {
            return 0;
        }

        var angle = Math.Atan2(position.Y, position.X);
        return Math.Round((angle < -hair ? angle + (2 * Math.PI) : Math.Max(angle, 0)) / hair) * hair;
    }
}
