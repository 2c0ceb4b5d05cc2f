using System;
using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>Writes a name and a smaller line below it into a circle, upright and as large as fits.</summary>
public static class PieceLabel
{
    /// <summary>Largest capitals, millimetres. Own choice: read from the far side of a table.</summary>
    public const double LargestHeight = 30;

    // The smaller line, and the free space between the two, as ratios of the name's height.
    private const double SmallerLine = 0.6;
    private const double Between = 0.5;

    // Part of the circle that is used; the rest keeps letters off the lines round it.
    private const double Used = 0.9;

    /// <param name="name">The name.</param>
    /// <param name="below">What stands below it.</param>
    /// <param name="circle">Where it may stand.</param>
    /// <param name="layer">What it is for.</param>
    public static ImmutableArray<DrawnText> Write(string name, string below, FreeCircle circle, DrawingLayer layer)
    {
        var halfWidth = Math.Max(LetterWidth.Estimate(name, 1), LetterWidth.Estimate(below, SmallerLine)) / 2;
        var halfHeight = (1 + Between + SmallerLine) / 2;
        var reach = new Point2(halfWidth, halfHeight).Length;
        var height = Math.Min(LargestHeight, Used * circle.Radius / reach);
        var nameAt = circle.Centre + new Point2(0, (halfHeight - 0.5) * height);
        var belowAt = circle.Centre - new Point2(0, (halfHeight - (SmallerLine / 2)) * height);
        return
        [
            new DrawnText(layer, name, Grid.Snap(nameAt), height, 0, TextAnchor.Middle),
            new DrawnText(layer, below, Grid.Snap(belowAt), SmallerLine * height, 0, TextAnchor.Middle),
        ];
    }
}
