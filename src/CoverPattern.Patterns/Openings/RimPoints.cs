using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Measures distances of rims.</summary>
internal static class RimPoints
{
    // Between rims distances are taken at points this near to each other, millimetres.
    private const double Spacing = 20;

    /// <summary>The straight pieces of a stretch.</summary>
    internal static IEnumerable<(Point2 From, Point2 To)> Steps(RimStretch stretch) => stretch.IsRing
        ? stretch.Points.Select((point, i) => (point, stretch.Points[(i + 1) % stretch.Points.Length]))
        : stretch.Points.Skip(1).Select((point, i) => (stretch.Points[i], point));

    /// <summary>Least distance of a stretch from a straight line of its chart, millimetres; 0 where they cross.</summary>
    internal static double Distance(RimStretch stretch, Point2 from, Point2 to) => Steps(stretch).Min(step => Segments.Distance(step.From, step.To, from, to));

    /// <summary>Least distance of a stretch from a point of its chart, millimetres.</summary>
    internal static double Distance(RimStretch stretch, Point2 point) => Steps(stretch).Min(step => Segments.Distance(step.From, step.To, point));

    /// <summary>Height of a rim's lowest place above the finished edge, millimetres; negative below it.</summary>
    internal static double Lowest(Shell shell, Region region) => region.Rim.Min(stretch => stretch.Points.Min(FaceHeight.Of(shell, shell.Faces[stretch.Face]).At));

    /// <summary>Points all along a rim, in space.</summary>
    internal static ImmutableArray<Point3> InSpace(Shell shell, Region region) =>
    [
        .. region.Rim.SelectMany(stretch =>
        {
            var plane = FacePlane.Of(shell, stretch.Face);
            return Steps(stretch).SelectMany(step => Between(step.From, step.To)).Select(plane.ToSpace);
        }),
    ];

    private static IEnumerable<Point2> Between(Point2 from, Point2 to)
    {
        var count = Math.Max(1, (int)Math.Ceiling(Point2.Distance(from, to) / Spacing));
        return Enumerable.Range(0, count + 1).Select(i => Point2.Between(from, to, (double)i / count));
    }
}
