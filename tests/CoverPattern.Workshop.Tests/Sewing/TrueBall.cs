using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A divided solid by another road than the product's: points face by face, merged by place, facets as their convex hull.</summary>
/// <remarks>
/// Corners in closed form; points by the rules of the frame's page [Clinton 1971; from memory]. The level members: an edge between
/// an upper and a lower corner crosses the equator at its middle, so an edge hub at the arc s from there stands sin s x 0.850651
/// high, and equations of one unknown put edge hubs and inner hubs at one height.
/// </remarks>
internal static class TrueBall
{
    private const double SamePlace = 1e-7;
    private const double OutsideOf = 1e-12;

    private static readonly double HalfEdge = Math.Atan(2) / 2;

    /// <summary>Points on the sphere of radius 1 and triangles, counter-clockwise seen from outside.</summary>
    internal static (IReadOnlyList<SpacePoint> Points, IReadOnlyList<int[]> Faces) Of(FrameWish wish)
    {
        var corners = wish.Family == FrameFamily.Octahedron ? Octahedron() : Icosahedron();
        var points = new List<SpacePoint>();
        foreach (var face in FacesOf(corners))
        {
            foreach (var point in Weights(wish).Select(weights => PointAt(wish, face, weights)).Where(point => !points.Exists(other => other.DistanceTo(point) < SamePlace)))
            {
                points.Add(point);
            }
        }

        SpacePoint[] turned = [.. points.Select(point => Turned(point, corners, wish.Up))];
        return (turned, Hull(turned));
    }

    private static SpacePoint[] Octahedron() => [new(0, 0, 1), new(1, 0, 0), new(0, 1, 0), new(-1, 0, 0), new(0, -1, 0), new(0, 0, -1)];

    /// <summary>Both rings of five stand at height 1/sqrt 5 and radius 2/sqrt 5.</summary>
    private static SpacePoint[] Icosahedron() =>
    [
        new(0, 0, 1),
        .. Enumerable.Range(0, 10).Select(i => (Angle: (i < 5 ? 72 * i : 36 + (72 * i)) * Math.PI / 180, Z: i < 5 ? 1 : -1))
            .Select(at => (1 / Math.Sqrt(5)) * new SpacePoint(2 * Math.Cos(at.Angle), 2 * Math.Sin(at.Angle), at.Z)),
        new(0, 0, -1),
    ];

    /// <summary>Three corners as near to each other as corners come.</summary>
    private static IEnumerable<SpacePoint[]> FacesOf(SpacePoint[] corners)
    {
        var edge = corners.Skip(1).Min(corner => corner.DistanceTo(corners[0]));
        bool AreNear(int i, int j) => corners[i].DistanceTo(corners[j]) < edge + SamePlace;
        return
            from i in Enumerable.Range(0, corners.Length)
            from j in Enumerable.Range(i + 1, corners.Length - i - 1)
            where AreNear(i, j)
            from k in Enumerable.Range(j + 1, corners.Length - j - 1)
            where AreNear(i, k) && AreNear(j, k)
            select new[] { corners[i], corners[j], corners[k] };
    }

    private static IEnumerable<int[]> Weights(FrameWish wish)
    {
        var sum = wish.Division == FrameDivision.ClassTwo ? 3 * wish.Frequency / 2 : wish.Frequency;
        return
            from a in Enumerable.Range(0, sum + 1)
            from b in Enumerable.Range(0, sum + 1 - a)
            let c = sum - a - b
            where wish.Division != FrameDivision.ClassTwo || (a % 3 == b % 3 && b % 3 == c % 3)
            select new[] { a, b, c };
    }

    private static SpacePoint PointAt(FrameWish wish, SpacePoint[] face, int[] weights)
    {
        var held = Enumerable.Range(0, 3).Where(i => weights[i] > 0).ToArray();
        return wish.Division switch
        {
            FrameDivision.EqualArc when held.Length == 2 => OnArc(face[held[0]], face[held[1]], (double)weights[held[1]] / wish.Frequency),
            FrameDivision.EqualArc when held.Length == 3 => Middle(face, weights, wish.Frequency),
            FrameDivision.LevelByEdgeHubs when held.Length == 2 && weights[held[0]] != weights[held[1]] =>
                OnArc(face[held[0]], face[held[1]], weights[held[0]] > weights[held[1]] ? EdgeShare(wish.Frequency) : 1 - EdgeShare(wish.Frequency)),
            FrameDivision.LevelByInnerHubs when held.Length == 3 => Sum(face, [.. weights.Select(weight => weight == 2 ? InnerWeight() : weight)]),
            _ => Sum(face, [.. weights.Select(weight => (double)weight)]),
        };
    }

    private static SpacePoint Sum(SpacePoint[] face, double[] weights) => ((weights[0] * face[0]) + (weights[1] * face[1]) + (weights[2] * face[2])).Unit;

    private static SpacePoint OnArc(SpacePoint from, SpacePoint to, double share)
    {
        var whole = Math.Acos(from.Dot(to));
        var across = (to - (from.Dot(to) * from)).Unit;
        return (Math.Cos(share * whole) * from) + (Math.Sin(share * whole) * across);
    }

    /// <summary>Middle of the three crossings of great circles between hubs of equal weight.</summary>
    private static SpacePoint Middle(SpacePoint[] face, int[] weights, int frequency)
    {
        SpacePoint Circle(int i)
        {
            var share = (double)(frequency - weights[i]) / frequency;
            return OnArc(face[i], face[(i + 1) % 3], share).Cross(OnArc(face[i], face[(i + 2) % 3], share));
        }

        var centre = face[0] + face[1] + face[2];
        return Enumerable.Range(0, 3).Select(i => Circle(i).Cross(Circle((i + 1) % 3)).Unit)
            .Aggregate(default(SpacePoint), (sum, crossing) => sum + ((crossing.Dot(centre) > 0 ? 1 : -1) * crossing)).Unit;
    }

    /// <summary>Of the edge's arc, from the near corner: the hub stands as high as the inner hubs of the belt's faces.</summary>
    private static double EdgeShare(int frequency)
    {
        // Face centre 3V 0.187592, inner hub 4V 0.276393 (closed form below with weights 1, 1, 1 and 2, 1, 1).
        var height = BeltHeight(frequency == 3 ? 1 : 2);
        return (HalfEdge - Math.Asin(height * Math.Sin(HalfEdge) * Math.Sqrt(5))) / (2 * HalfEdge);
    }

    /// <summary>Height of unit(w A + B + C), A and B upper corners, C a lower one; any two corners have the product 1/sqrt 5.</summary>
    private static double BeltHeight(double w) => w / Math.Sqrt(5) / Math.Sqrt(2 + (w * w) + ((2 + (4 * w)) / Math.Sqrt(5)));

    /// <summary>The weight with which that height is the one of the edge hub unit(3 A + C): w^2 = 5 z^2 (w^2 + 4 w / sqrt 5 + 2 + 2 / sqrt 5).</summary>
    private static double InnerWeight()
    {
        var square = 5 * Math.Pow(2 / Math.Sqrt(5) / Math.Sqrt(10 + (6 / Math.Sqrt(5))), 2);
        var (a, b, c) = (1 - square, -square * 4 / Math.Sqrt(5), -square * (2 + (2 / Math.Sqrt(5))));
        return (-b + Math.Sqrt((b * b) - (4 * a * c))) / (2 * a);
    }

    private static SpacePoint Turned(SpacePoint point, SpacePoint[] corners, FrameUp up)
    {
        if (up == FrameUp.Vertex)
        {
            return point;
        }

        var upward = (up == FrameUp.Edge ? corners[0] + corners[1] : corners[0] + corners[1] + corners[2]).Unit;
        var front = (corners[1] - (corners[1].Dot(upward) * upward)).Unit;
        return new SpacePoint(point.Dot(front), point.Dot(upward.Cross(front)), point.Dot(upward));
    }

    /// <summary>Gift wrapping: over every open edge the facet that has no point outside.</summary>
    private static List<int[]> Hull(SpacePoint[] points)
    {
        var (faces, done) = (new List<int[]>(), new HashSet<(int, int)>());
        var open = new Queue<(int From, int To)>([(0, Enumerable.Range(1, points.Length - 1).MinBy(i => points[i].DistanceTo(points[0])))]);
        while (open.TryDequeue(out var edge))
        {
            if (done.Contains(edge))
            {
                continue;
            }

            var face = new[] { edge.From, edge.To, Third(points, edge.From, edge.To) };
            faces.Add(face);
            for (var i = 0; i < 3; i++)
            {
                done.Add((face[i], face[(i + 1) % 3]));
                open.Enqueue((face[(i + 1) % 3], face[i]));
            }
        }

        return faces;
    }

    private static int Third(SpacePoint[] points, int from, int to)
    {
        var third = -1;
        var normal = default(SpacePoint);
        for (var i = 0; i < points.Length; i++)
        {
            if (i != from && i != to && (third < 0 || normal.Dot(points[i] - points[from]) > OutsideOf))
            {
                (third, normal) = (i, (points[to] - points[from]).Cross(points[i] - points[from]));
            }
        }

        return third;
    }
}
