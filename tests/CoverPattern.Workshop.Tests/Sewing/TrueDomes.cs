using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Frames of every kind in the tests' own numbers: parts of divided solids, drawn out or on a wall, and gore roofs.</summary>
internal static class TrueDomes
{
    /// <summary>The frame that a job wishes by family or gores; sizes by the sphere's radius only.</summary>
    internal static TrueMesh Of(FrameWish wish)
    {
        var (hubs, faces) = wish.Gores is { } gores ? Gores(gores) : Dome(wish);
        return OnWall(hubs, faces, wish.RiserMm);
    }

    /// <summary>Facets no farther from the highest hubs than the rows say.</summary>
    private static (List<SpacePoint> Hubs, List<int[]> Faces) Dome(FrameWish wish)
    {
        var (points, all) = TrueBall.Of(wish);
        var top = points.Max(point => point.Z);
        var ring = points.Select(point => point.Z > top - 1e-7 ? 0 : int.MaxValue).ToArray();
        for (var step = 0; step < wish.Rows; step++)
        {
            foreach (var hub in all.Where(face => face.Any(hub => ring[hub] == step)).SelectMany(face => face).Where(hub => ring[hub] > step + 1).ToArray())
            {
                ring[hub] = step + 1;
            }
        }

        int[][] kept = [.. all.Where(face => face.All(hub => ring[hub] <= wish.Rows))];
        int[] used = [.. kept.SelectMany(face => face).Distinct().Order()];
        var stretch = wish.Stretch is { } s ? new SpacePoint(s.X, s.Y, s.Z) : new SpacePoint(1, 1, 1);
        return (
            [.. used.Select(hub => wish.Size.Millimetres * new SpacePoint(stretch.X * points[hub].X, stretch.Y * points[hub].Y, stretch.Z * points[hub].Z))],
            [.. kept.Select(face => face.Select(hub => Array.IndexOf(used, hub)).ToArray())]);
    }

    /// <summary>Rings from the top down; stations of a circle through top and eaves, of an ellipse in equal steps of its angle, of a straight line.</summary>
    private static (List<SpacePoint> Hubs, List<int[]> Faces) Gores(GoreWish wish)
    {
        var (radius, height, n) = (wish.Radius.Millimetres, wish.Height.Millimetres, wish.Sides);
        var sphere = ((radius * radius) + (height * height)) / (2 * height);
        var whole = wish.Meridian == GoreMeridian.Circle ? 2 * Math.Asin(Math.Sqrt((radius * radius) + (height * height)) / (2 * sphere)) : Math.PI / 2;
        var crown = wish.Crown?.Millimetres ?? 0;
        var from = wish.Meridian switch { GoreMeridian.Circle => Math.Asin(crown / sphere), GoreMeridian.Ellipse => Math.Asin(crown / radius), _ => crown / radius };
        var to = wish.Meridian == GoreMeridian.Cone ? 1 : whole;
        (double R, double Z) Station(int k)
        {
            var at = from + ((to - from) * k / wish.Chords);
            return wish.Meridian switch
            {
                GoreMeridian.Circle => (sphere * Math.Sin(at), height - sphere + (sphere * Math.Cos(at))),
                GoreMeridian.Ellipse => (radius * Math.Sin(at), height * Math.Cos(at)),
                _ => (radius * at, height * (1 - at)),
            };
        }

        var hubs = new List<SpacePoint>();
        var starts = new List<int>();
        for (var k = 0; k <= wish.Chords; k++)
        {
            var (r, z) = Station(k);
            starts.Add(hubs.Count);
            hubs.AddRange(Enumerable.Range(0, k == 0 && crown == 0 ? 1 : n).Select(i => new SpacePoint(r * Math.Cos(2 * Math.PI * i / n), r * Math.Sin(2 * Math.PI * i / n), z)));
        }

        int Hub(int k, int i) => starts[k] + (k == 0 && crown == 0 ? 0 : i % n);
        return (hubs, [.. from k in Enumerable.Range(0, wish.Chords)
                          from i in Enumerable.Range(0, n)
                          select new[] { Hub(k + 1, i), Hub(k + 1, i + 1), Hub(k, i + 1), Hub(k, i) }.Distinct().ToArray()]);
    }

    private static TrueMesh OnWall(List<SpacePoint> hubs, List<int[]> faces, double height)
    {
        var above = new TrueMesh(hubs, faces, []);
        if (height == 0)
        {
            return above;
        }

        var foot = above.Base.Min(hub => hubs[hub].Z) - height;
        var under = above.Base.Select((hub, i) => (hub, hubs.Count + i)).ToDictionary(pair => pair.hub, pair => pair.Item2);
        return new TrueMesh(
            [.. hubs, .. above.Base.Select(hub => hubs[hub] with { Z = foot })],
            [.. faces, .. above.BaseEdges.Select(edge => new[] { under[edge.From], under[edge.To], edge.To, edge.From })],
            []);
    }
}
