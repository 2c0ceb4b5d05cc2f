using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Makes the frame from a survey, or from family, frequency, cut and size.</summary>
public static class FrameBuilder
{
    /// <summary>Builds the frame that a job wishes.</summary>
    /// <param name="wish">A survey, or a cut that the ball has and a positive size.</param>
    /// <exception cref="ArgumentException">There is no such cut, or the survey is no frame: the reader of jobs should have refused it.</exception>
    public static Frame Build(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Survey is not null)
        {
            return SurveyFrame.Build(wish.Survey);
        }

        if (wish.Struts is not null)
        {
            return StrutFrame.Build(wish);
        }

        var (points, facets) = wish.Gores is { } gores ? GoreRoof.Make(gores) : Dome(wish);
        (points, facets) = RiserWall.Add(points, facets, wish.RiserMm);
        return new FrameSketch(points, facets).Finish();
    }

    /// <summary>Radius of the sphere through the hub centres, millimetres.</summary>
    /// <param name="wish">No survey.</param>
    public static double SphereRadius(FrameWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return wish.Size.Millimetres / SizeOnUnitSphere(Part(wish).Points, wish);
    }

    private static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Facets) Dome(FrameWish wish)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(wish.Size.Millimetres, 0);
        var (points, facets) = Part(wish);
        var radius = wish.Size.Millimetres / SizeOnUnitSphere(points, wish);
        return wish.Stretch is { } stretch
            ? ([.. points.Select(point => new Point3(radius * stretch.X * point.X, radius * stretch.Y * point.Y, radius * stretch.Z * point.Z))], facets)
            : ([.. points.Select(point => radius * point)], facets);
    }

    /// <summary>The hubs and facets above the cut, on the sphere of radius 1.</summary>
    private static (ImmutableArray<Point3> Points, ImmutableArray<ImmutableArray<int>> Facets) Part(FrameWish wish)
    {
        if (wish.CutHubs.IsDefaultOrEmpty)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(wish.Rows, 1);
        }

        var ball = Ball.Divide(wish);
        if (wish.CutHubs.IsDefaultOrEmpty)
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThan(wish.Rows, ball.MostRows);
        }

        var facets = ball.Above(wish, out var trouble) ?? throw new ArgumentException($"There is no cut {wish.Cut}: {trouble}.", nameof(wish));
        int[] kept = [.. facets.SelectMany(facet => facet).Distinct().Order()];
        var newIndex = kept.Select((old, at) => (old, at)).ToDictionary(pair => pair.old, pair => pair.at);
        return ([.. kept.Select(hub => ball.Points[hub])], [.. facets.Select(facet => facet.Select(hub => newIndex[hub]).ToImmutableArray())]);
    }

    /// <summary>What the size measures on a frame of sphere radius 1.</summary>
    private static double SizeOnUnitSphere(ImmutableArray<Point3> points, FrameWish wish)
    {
        var lowest = points.MinBy(point => point.Z);
        return wish.Measure switch
        {
            FrameMeasure.Radius => 1,
            FrameMeasure.Diameter => 2,
            FrameMeasure.FloorDiameter => 2 * lowest.Plan.Length,
            FrameMeasure.Height => points.Max(point => point.Z) - lowest.Z,
            _ => throw new ArgumentOutOfRangeException(nameof(wish), wish.Measure, "Unknown measure of a frame."),
        };
    }
}
