using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Hubs and facets of a gore roof: trapezoids between rings, triangles at a closed top; all exactly plane.</summary>
internal static class GoreRoof
{
    // A crown ring smaller than this is a point, millimetres.
    private const double Point = 1e-6;

    /// <summary>Hubs and facets, eaves at z = 0, one eaves hub on +x.</summary>
    internal static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Facets) Make(GoreWish wish)
    {
        var rings = Rings(wish);
        var (points, facets) = (ImmutableArray.CreateBuilder<Point3>(), ImmutableArray.CreateBuilder<ImmutableArray<int>>());
        var first = new int[rings.Length];
        for (var ring = 0; ring < rings.Length; ring++)
        {
            first[ring] = points.Count;
            var count = rings[ring].X > Point ? wish.Sides : 1;
            points.AddRange(Enumerable.Range(0, count).Select(side => At(rings[ring], 2 * Math.PI * side / wish.Sides)));
        }

        for (var ring = 0; ring + 1 < rings.Length; ring++)
        {
            for (var side = 0; side < wish.Sides; side++)
            {
                var next = (side + 1) % wish.Sides;
                var (low, lowNext) = (first[ring + 1] + side, first[ring + 1] + next);
                facets.Add(rings[ring].X > Point ? [low, lowNext, first[ring] + next, first[ring] + side] : [low, lowNext, first[ring]]);
            }
        }

        return (points.ToImmutable(), facets.ToImmutable());
    }

    /// <summary>Radius and height of each ring of hubs, top first.</summary>
    internal static ImmutableArray<Point2> Rings(GoreWish wish)
    {
        if (wish.Meridian == GoreMeridian.Points)
        {
            return wish.Points;
        }

        var (radius, height) = (wish.Radius.Millimetres, wish.Height.Millimetres);
        var crown = wish.Crown?.Millimetres ?? 0;

        // The sphere through eaves and top whose top is level: its radius and the angle of the eaves from the top.
        var sphere = ((radius * radius) + (height * height)) / (2 * height);
        var whole = wish.Meridian == GoreMeridian.Circle ? Math.Atan2(radius, sphere - height) : Math.PI / 2;
        var start = wish.Meridian switch
        {
            GoreMeridian.Circle => Math.Asin(crown / sphere) / whole,
            GoreMeridian.Ellipse => Math.Asin(crown / radius) / whole,
            _ => crown / radius,
        };
        return [.. Enumerable.Range(0, wish.Chords + 1).Select(k =>
        {
            var share = start + ((1 - start) * k / wish.Chords);
            var angle = share * whole;
            return wish.Meridian switch
            {
                GoreMeridian.Circle => new Point2(sphere * Math.Sin(angle), (sphere * Math.Cos(angle)) - (sphere - height)),
                GoreMeridian.Ellipse => new Point2(radius * Math.Sin(angle), height * Math.Cos(angle)),
                GoreMeridian.Cone => new Point2(share * radius, (1 - share) * height),
                _ => throw new ArgumentOutOfRangeException(nameof(wish), wish.Meridian, "Unknown meridian."),
            };
        })];
    }

    private static Point3 At(Point2 ring, double angle) => new(ring.X * Math.Cos(angle), ring.X * Math.Sin(angle), ring.Y);
}
