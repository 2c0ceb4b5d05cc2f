using System;
using System.Collections.Generic;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public sealed class CirclesTests
{
    [Fact]
    public void Polygon_AnyRadius_HasTheCirclesAreaAndStaysNear() => Gen.Double[2, 6000].Sample(radius =>
    {
        var ring = Circles.Polygon(default, radius);

        // Area and distance of a circle, by the formulas of school; half a grid step, 0.0005 mm, all round is the rounding.
        Assert.Equal(Math.PI * radius * radius, Rings.SignedArea(ring), Rings.Perimeter(ring) * 0.0005);
        Assert.All(ring, corner => Assert.InRange(corner.Length, radius - 0.001, radius + 0.02));
        Assert.All(Middles(ring), middle => Assert.InRange(middle.Length, radius - 0.02, radius + 0.02));
        Assert.Equal(ring.AsEnumerable(), Grid.Snap(ring));
        Assert.True(ExactPredicates.IsSimple(Rings.ToSteps(ring)));
    });

    [Fact]
    public void Polygon_MirroredOrTurned_IsTheSameRing() => Gen.Double[2, 2000].Sample(radius =>
    {
        var ring = Circles.Polygon(default, radius).ToHashSet();

        Assert.True(ring.SetEquals(ring.Select(corner => corner with { Y = -corner.Y })));
        Assert.True(ring.SetEquals(ring.Select(corner => new Point2(corner.Y, corner.X))));
        Assert.True(ring.SetEquals(ring.Select(corner => corner.QuarterTurned())));
    });

    [Fact]
    public void Polygon_AboutAnyCentre_IsTheSameRingMoved()
    {
        var centre = new Point2(123.45678, -98.7654);

        var ring = Circles.Polygon(centre, 304.8);

        Assert.Equal(Circles.Polygon(default, 304.8).Select(corner => corner + Grid.Snap(centre)), ring);
    }

    [Fact]
    public void Hole_AnyCircle_IsThePolygonBackward()
    {
        var (ring, hole) = (Circles.Polygon(default, 100), Circles.Hole(default, 100));

        Assert.Equal(ring[0], hole[0]);
        Assert.Equal(ring.Skip(1).Reverse(), hole.Skip(1));
        Assert.Equal(-Rings.SignedArea(ring), Rings.SignedArea(hole), precision: 6);
    }

    [Fact]
    public void Polygon_NoRadius_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Circles.Polygon(default, 0));

    [Fact]
    public void Largest_RingWithHole_LiesBetween()
    {
        // By hand: between circles of 100 and 60 about one centre a circle of 20 fits.
        var circle = InscribedCircle.Largest([Circles.Polygon(default, 100), Circles.Hole(default, 60)], 0.5);

        Assert.InRange(circle.Radius, 19.5, 20.02);
        Assert.InRange(circle.Centre.Length, 79, 81);
    }

    private static IEnumerable<Point2> Middles(IReadOnlyList<Point2> ring) =>
        ring.Select((corner, i) => Point2.Between(corner, ring[(i + 1) % ring.Count], 0.5));
}
