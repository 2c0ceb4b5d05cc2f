using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Makes the frame from family, frequency, rows and size.</summary>
public static class FrameBuilder
{
    /// <summary>Builds the frame that a job wishes.</summary>
    /// <param name="wish">Frequency 1 to 8, rows 1 to 3 x frequency - 1, positive size.</param>
    /// <exception cref="ArgumentOutOfRangeException">Frequency, rows or size are out of their range: the reader of jobs should have refused them.</exception>
    public static Frame Build(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentOutOfRangeException.ThrowIfLessThan(wish.Frequency, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(wish.Rows, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(wish.Rows, Icosahedron.LevelsBelowTop * wish.Frequency);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(wish.Size.Millimetres, 0);

        var (points, triangles) = SphereGrid.Divide(Icosahedron.Faces(), wish.Frequency);
        var radius = wish.Size.Millimetres / SizeOnUnitSphere(points, wish);
        var deck = points.Where(p => p.RingFromTop <= wish.Rows).Min(p => p.Direction.Z) * radius;
        var sketch = new FrameSketch(
            [.. points.Select(p => (p.RingFromTop, (radius * p.Direction) - new Point3(0, 0, deck)))],
            [.. triangles],
            wish.Rows);
        return sketch.Finish();
    }

    /// <summary>What the size measures on a frame of sphere radius 1.</summary>
    private static double SizeOnUnitSphere(ImmutableArray<SpherePoint> points, FrameWish wish)
    {
        var lowest = points.Where(p => p.RingFromTop <= wish.Rows).MinBy(p => p.Direction.Z).Direction;
        return wish.Measure switch
        {
            FrameMeasure.Radius => 1,
            FrameMeasure.Diameter => 2,
            FrameMeasure.FloorDiameter => 2 * lowest.Plan.Length,
            FrameMeasure.Height => 1 - lowest.Z,
            _ => throw new ArgumentOutOfRangeException(nameof(wish), wish.Measure, "Unknown measure of a frame."),
        };
    }
}
