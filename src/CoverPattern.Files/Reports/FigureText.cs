using System;
using System.Collections.Immutable;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>One line of writing in a figure.</summary>
/// <param name="Style">Class that the style sheet knows.</param>
/// <param name="Text">Any text.</param>
/// <param name="At">Where it stands, in height the middle of its capitals; millimetres on paper, y up.</param>
/// <param name="Height">Height of its capitals, millimetres on paper.</param>
/// <param name="TurnDegrees">Turn about the point, degrees counter-clockwise.</param>
/// <param name="Anchor">Which part stands at the point.</param>
internal sealed record FigureText(string Style, string Text, Point2 At, double Height, double TurnDegrees, TextAnchor Anchor)
{
    /// <summary>The four corners of the box in which it stands, rather too wide than too narrow.</summary>
    public ImmutableArray<Point2> Box()
    {
        var width = LetterWidth.Estimate(Text, Height);
        var start = Anchor switch
        {
            TextAnchor.Start => 0,
            TextAnchor.Middle => -width / 2,
            TextAnchor.End => -width,
            _ => throw new InvalidOperationException("An anchor is start, middle or end."),
        };
        return RigidMap.FromDegrees(TurnDegrees, At, mirrored: false).Apply(
        [
            new Point2(start, -Height / 2), new Point2(start + width, -Height / 2),
            new Point2(start + width, Height / 2), new Point2(start, Height / 2),
        ]);
    }
}
