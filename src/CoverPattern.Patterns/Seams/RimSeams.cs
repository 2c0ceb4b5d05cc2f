using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>How the rim of a region lies to the seams that were planned.</summary>
internal static class RimSeams
{
    /// <summary>A rim that crosses a seam more flatly leaves points of cloth that cannot be sewn (own choice), degrees.</summary>
    internal const double FlattestCrossing = 20;

    /// <summary>Seams of a face, each with the edge of the shell.</summary>
    internal static IEnumerable<(int Edge, Point2 From, Point2 To)> Of(ShellFace face, SeamPlan plan) => Enumerable.Range(0, face.Edges.Length)
        .Where(i => plan.Edges[face.Edges[i]].Role == EdgeRole.Seam)
        .Select(i => (face.Edges[i], face.Chart[i], face.Chart[(i + 1) % face.Chart.Length]));

    /// <summary>Least distance of a rim from a seam that it does not cross, millimetres; endless without one.</summary>
    internal static double Beside(Shell shell, SeamPlan plan, Region region) => region.Rim.SelectMany(stretch => Of(shell.Faces[stretch.Face], plan)
        .Where(side => stretch.Enter?.Edge != side.Edge && stretch.Leave?.Edge != side.Edge)
        .Select(side => RimPoints.Distance(stretch, side.From, side.To))).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>The flattest angle under which a rim crosses a seam or the finished edge, degrees, 0 to 90; 90 where it crosses none.</summary>
    internal static double Flattest(Shell shell, SeamPlan plan, Region region) => Crossed(plan, region).Select(stretch =>
    {
        var face = shell.Faces[stretch.Face];
        var at = face.Edges.IndexOf(stretch.Leave!.Value.Edge);
        var (line, step) = (face.Chart[(at + 1) % face.Chart.Length] - face.Chart[at], stretch.Points[^1] - stretch.Points[^2]);
        return Math.Asin(Math.Min(1, Math.Abs(Point2.Cross(line.Unit(), step.Unit())))) * 180 / Math.PI;
    }).DefaultIfEmpty(90).Min();

    /// <summary>How far a rim reaches over a seam where it comes back over the same one at once, at the least, millimetres; endless where it does not.</summary>
    internal static double Over(Shell shell, SeamPlan plan, Region region) => Crossed(plan, region)
        .Where(stretch => stretch.Enter?.Edge == stretch.Leave?.Edge && plan.Edges[stretch.Leave!.Value.Edge].Role == EdgeRole.Seam)
        .Select(stretch => stretch.Points.Max(point => Lines.Distance(stretch.Points[0], stretch.Points[^1], point)))
        .DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>Stretches of a rim that end at a seam or at the finished edge.</summary>
    internal static IEnumerable<RimStretch> Crossed(SeamPlan plan, Region region) =>
        region.Rim.Where(stretch => stretch.Leave is { Edge: >= 0 } leave && plan.Edges[leave.Edge].Role != EdgeRole.Fold);

    /// <summary>Whether a rim cuts through the closing seam.</summary>
    internal static bool CutsClosing(SeamPlan plan, Region region) => region.Rim.Any(stretch => stretch.Leave is { Edge: >= 0 } leave && plan.Edges[leave.Edge].MakeUp is { IsClosing: true });
}
