using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;

namespace CoverPattern.Lays.Tests.Nesting.Search;

/// <summary>The second opinion: a general-purpose geometry library.</summary>
internal static class NtsProof
{
    private static readonly GeometryFactory Factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, new PrecisionModel(), 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

    public static Polygon ToPolygon(NestingItem item, NestingPlacement placement) => Factory.CreatePolygon(
        ToRing(placement, item.Outline), [.. item.Holes.Select(hole => ToRing(placement, hole))]);

    /// <summary>Area two pieces share, square millimetres.</summary>
    public static double CommonArea(Polygon left, Polygon right) => left.Intersection(right).Area;

    /// <summary>Asserts that all copies lie on the strip, apart by the spacing.</summary>
    public static void AssertHolds(NestingTask task, NestingLayout layout)
    {
        var pieces = layout.Placements.Select(placement => ToPolygon(task.Items[placement.Item], placement)).ToArray();
        Assert.Equal(task.Items.SelectMany((item, k) => Enumerable.Repeat(k, item.Quantity)), layout.Placements.Select(p => p.Item));
        Assert.Equal(layout.Length, pieces.Max(piece => piece.EnvelopeInternal.MaxX));
        Assert.All(pieces, piece => Assert.True(piece.EnvelopeInternal.MinX >= 0 && piece.EnvelopeInternal.MinY >= 0 && piece.EnvelopeInternal.MaxY <= task.Width));
        for (var i = 0; i < pieces.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.True(CommonArea(pieces[i], pieces[j]) < 1e-6, FormattableString.Invariant($"copies {j} and {i} overlap"));
                Assert.True(pieces[i].Distance(pieces[j]) >= task.Spacing - 0.001, FormattableString.Invariant($"copies {j} and {i} lie too near"));
            }
        }
    }

    private static LinearRing ToRing(NestingPlacement placement, ImmutableArray<Point2> ring)
    {
        var lying = placement.Apply(ring);
        return Factory.CreateLinearRing([.. lying.Append(lying[0]).Select(point => new Coordinate(point.X, point.Y))]);
    }
}
