using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using NetTopologySuite;
using NetTopologySuite.Geometries;

namespace Bench;

/// <summary>Checks a layout by other means than the search: a general-purpose geometry library.</summary>
internal static class LayoutProof
{
    private static readonly GeometryFactory Factory = new NtsGeometryServices(
        NetTopologySuite.Geometries.Implementation.CoordinateArraySequenceFactory.Instance,
        new PrecisionModel(),
        0,
        GeometryOverlay.NG,
        new CoordinateEqualityComparer()).CreateGeometryFactory();

    public static bool Holds(NestingTask task, NestingLayout layout)
    {
        var pieces = layout.Placements.Select(placement => ToPolygon(task.Items[placement.Item], placement)).ToArray();
        var counts = layout.Placements.GroupBy(placement => placement.Item).ToDictionary(group => group.Key, group => group.Count());
        var all = task.Items.Select((item, k) => counts.GetValueOrDefault(k) == item.Quantity).All(right => right);
        var kept = pieces.All(piece => piece.EnvelopeInternal is { } box && box.MinX >= 0 && box.MinY >= 0 && box.MaxX <= layout.Length && box.MaxY <= task.Width);
        return all && kept && ArePairsApart(pieces, task.Spacing);
    }

    private static bool ArePairsApart(Polygon[] pieces, double spacing)
    {
        // Pieces on the grid that touch share no area; the library computes the common part in floating point.
        var largest = 1e-9 * pieces.Average(piece => piece.Area);
        for (var i = 0; i < pieces.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (pieces[i].EnvelopeInternal.Distance(pieces[j].EnvelopeInternal) > spacing)
                {
                    continue;
                }

                if (pieces[i].Intersection(pieces[j]).Area > largest || pieces[i].Distance(pieces[j]) < spacing - 0.001)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Polygon ToPolygon(NestingItem item, NestingPlacement placement) => Factory.CreatePolygon(
        ToRing(placement, item.Outline),
        [.. item.Holes.Select(hole => ToRing(placement, hole))]);

    private static LinearRing ToRing(NestingPlacement placement, System.Collections.Immutable.ImmutableArray<Point2> ring)
    {
        var lying = placement.Apply(ring);
        return Factory.CreateLinearRing([.. lying.Append(lying[0]).Select(point => new Coordinate(point.X, point.Y))]);
    }
}
