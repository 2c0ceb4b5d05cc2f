using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>Measures how far a drawing reaches.</summary>
public static class DrawingExtent
{
    /// <summary>The upright rectangle round all lines and, as far as it can be known, all texts.</summary>
    /// <returns>A rectangle of no size at the origin when nothing is drawn.</returns>
    public static Box2 Measure(Drawing drawing)
    {
        var corners = drawing.LinesOnSheet().SelectMany(line => line.Points)
            .Concat(drawing.Texts.SelectMany(Corners)).ToArray();
        return corners.Length == 0 ? default : Rings.Bounds(corners);
    }

    /// <summary>The four corners of the box in which a text stands.</summary>
    public static IEnumerable<Point2> Corners(DrawnText text)
    {
        var width = LetterWidth.Estimate(text.Text, text.Height);
        var start = text.Anchor switch
        {
            TextAnchor.Start => 0,
            TextAnchor.Middle => -width / 2,
            TextAnchor.End => -width,
            _ => throw new ArgumentOutOfRangeException(nameof(text), text.Anchor, "An anchor is start, middle or end."),
        };
        var map = RigidMap.FromDegrees(text.TurnDegrees, text.At, mirrored: false);
        return map.Apply(
        [
            new Point2(start, -text.Height / 2), new Point2(start + width, -text.Height / 2),
            new Point2(start + width, text.Height / 2), new Point2(start, text.Height / 2),
        ]);
    }
}
