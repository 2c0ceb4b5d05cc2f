using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CoverPattern.Patterns.Tests.Pieces;

public class StripPiecesTests
{
    /// <summary>
    /// A rim of short steps that bends where it crosses a line of the cover, as a projected one does: the strip and its cut line are the
    /// buffers of another library (NetTopologySuite, mitred, ends square).
    /// </summary>
    [Theory]
    [InlineData(12, 3, 3)]
    [InlineData(-12, 3, 3)]
    [InlineData(19, 0.8, 0.8)]
    [InlineData(-19, 5, 5)]
    // Only the short step behind the bend is drawn backward: the lines about it need not cross.
    [InlineData(-2, 10, 0.4)]
    [InlineData(2, 10, 0.4)]
    public void Band_BendAmongShortSteps_IsTheBufferOfAnotherLibrary(double degrees, double step, double stepBehind)
    {
        var way = Bent(degrees * Math.PI / 180, step, stepBehind);

        var band = StripPieces.Band("O1pz1c", "canvas", way, 80);

        var chord = (way[^1] - way[0]).Unit();
        var run = Line([.. way.Select(point => new Point2(Point2.Dot(point, chord), Point2.Cross(chord, point)))]).Buffer(40, new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, 5) { SimplifyFactor = 1e-6 });
        Assert.True(Ring(band.Corners).IsValid);
        Assert.True(run.SymmetricDifference(Ring(band.Corners)).Area < Rings.Perimeter(band.Corners) / 1024, "That library joins the flattest bends its own way: a thousandth of a millimetre along the outline.");
        Assert.Equal(band.Corners.Length, band.Edges.Sum(edge => edge.Steps));

        var cut = CutLine.Draw([.. band.Corners.Select((corner, i) => new SewEdge(corner, band.Corners[(i + 1) % band.Corners.Length], EdgeRole.Hemmed, 12))], default);
        var wider = new BufferOp(Ring(band.Corners), new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, CutLine.MitreLimit) { SimplifyFactor = 1e-6 }).GetResultGeometry(12);
        Assert.True(Ring(cut).IsValid);
        Assert.True(wider.SymmetricDifference(Ring(cut)).Area < Rings.Perimeter(cut) / 1024);
    }

    /// <summary>300 mm of a circle of 2000 mm radius in short steps, a bend, and 300 mm more.</summary>
    private static ImmutableArray<Point2> Bent(double bend, double step, double behind)
    {
        var (points, heading) = (ImmutableArray.CreateBuilder<Point2>(), 0.0);
        points.Add(default);
        var half = (int)(300 / step);
        for (var i = 0; i < 2 * half; i++)
        {
            points.Add(points[^1] + ((i == half + 1 ? behind : step) * new Point2(Math.Cos(heading), Math.Sin(heading))));
            heading += i == half ? bend : step / 2000;
        }

        return points.ToImmutable();
    }

    private static LineString Line(ImmutableArray<Point2> way) => new([.. way.Select(point => new Coordinate(point.X, point.Y))]);

    private static Polygon Ring(ImmutableArray<Point2> ring) => new(new LinearRing([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]));
}
