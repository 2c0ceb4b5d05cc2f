using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Reports;

/// <summary>Draws the finished cover as somebody in front of it, or above, would see it.</summary>
internal static class DomeDrawing
{
    // Own choices, millimetres on paper: a quarter hand's breadth is left for the names of hubs round the cover.
    private const double Room = 146;
    private const double Height = 130;
    private const double Margin = 20;
    private const double BarRoom = 9;
    private const double FrontText = 2.6;

    /// <summary>Largest and least height of capitals, millimetres on paper: 2.6 mm reads like print, 1.3 mm like a footnote.</summary>
    internal const double LargestText = 2.6;
    internal const double LeastText = 1.3;

    // A face seen under less than this (sine of the angle between its plane and the view) is an edge.
    private const double EdgeOn = 1e-3;

    private static readonly double[] Scales = [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 75, 100, 150, 200, 250, 300, 400, 500, 1000, 2000, 5000];

    public static DomeView Draw(Result result, DomeDirection direction)
    {
        var all = DrawnFace.Of(result.Shell, result.Cut).ToArray();
        var scale = Scale(all);
        var faces = all.Where(face => Facing(face, direction) > EdgeOn)
            .OrderBy(face => face.Corners.Average(corner => Point3.Dot(corner, direction.Toward)))
            .ThenBy(face => face.Label, StringComparer.Ordinal)
            .Select(face => (face.Label, face.Kind, Ring: ImmutableArray.CreateRange(face.Corners, corner => (1 / scale) * direction.Project(corner))))
            .ToArray();
        var outline = Rings.Bounds(faces.SelectMany(face => face.Ring));
        var marks = CoverMarks.Of(result).Map(face => Chart(result.Shell, face, direction, 1 / scale));
        var hubs = BaseHubs.Draw(result, direction, 1 / scale, outline);
        var bar = ScaleBar.Draw(scale, new Point2(outline.Low.X, hubs.Lowest - BarRoom));
        var front = Front(direction, outline, hubs.Texts);
        var named = CoverMarkNames.Write(marks, faces.Select(face => face.Ring), hubs.Texts);
        var labels = faces.Where(face => face.Kind == FaceKind.Facet).GroupBy(face => face.Label, StringComparer.Ordinal)
            .Select(facet => (Label: facet.Key, Text: FacetName.Largest(facet.Select(face => face.Ring), facet.Key, named.Taken)))
            .ToArray();
        var (left, right) = (outline.Centre.X - (Room / 2) - Margin, outline.Centre.X + (Room / 2) + Margin);
        var reach = Rings.Bounds([new Point2(left, hubs.Lowest - BarRoom - 4), new Point2(right, hubs.Highest + 2), .. front.Concat(hubs.Texts).SelectMany(text => text.Box())]);
        return new DomeView(
            new Figure(
                direction.Name,
                reach,
                [.. faces.Select(face => new FigureLine(face.Kind == FaceKind.Facet ? "face" : "skirt", face.Ring, IsClosed: true)), .. marks.Figures(), .. hubs.Lines, .. bar.Lines],
                [.. named.Texts, .. labels.Select(label => label.Text).OfType<FigureText>(), .. hubs.Texts, .. bar.Texts, .. front]),
            [.. labels.Select(label => label.Label).Order(StringComparer.Ordinal)],
            [.. labels.Where(label => label.Text is null).Select(label => label.Label).Order(StringComparer.Ordinal), .. named.Unnamed],
            scale);
    }

    /// <summary>The word at the front, beyond the names of the hubs; none in the elevation that looks at it.</summary>
    private static IEnumerable<FigureText> Front(DomeDirection direction, Box2 outline, ImmutableArray<FigureText> hubs)
    {
        var corners = hubs.SelectMany(text => text.Box()).Select(corner => corner.X).Append(outline.Low.X).Append(outline.High.X).ToArray();
        var x = direction.Right.X > 0.5 ? corners.Max() + FrontText : corners.Min() - FrontText;
        return Math.Abs(direction.Right.X) > 0.5
            ? [new FigureText("front", "FRONT", new Point2(x, direction.IsPlan ? 0 : outline.Centre.Y), FrontText, 90, TextAnchor.Middle)]
            : [];
    }

    /// <summary>From the chart of a face to paper; null for a face that is not seen.</summary>
    private static Func<Point2, Point2>? Chart(Shell shell, int face, DomeDirection direction, double scale)
    {
        var drawn = DrawnFace.Whole(shell, face);
        return Facing(drawn, direction) > EdgeOn ? point => scale * direction.Project(drawn.InSpace(point)) : null;
    }

    private static double Facing(DrawnFace face, DomeDirection direction) => Point3.Dot(face.Outward.Unit(), direction.Toward);

    /// <summary>The first round scale at which every view of the cover fits; all three have the same.</summary>
    private static double Scale(DrawnFace[] faces)
    {
        var corners = faces.SelectMany(face => face.Corners).ToArray();
        var width = Math.Max(corners.Max(p => p.X) - corners.Min(p => p.X), corners.Max(p => p.Y) - corners.Min(p => p.Y));
        var height = corners.Max(p => p.Z) - corners.Min(p => p.Z);
        return Scales.First(scale => (width <= Room * scale && height <= Height * scale) || scale == Scales[^1]);
    }
}
