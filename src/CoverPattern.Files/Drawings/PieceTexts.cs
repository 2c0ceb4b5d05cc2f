using System.Collections.Generic;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>The writing on one placed piece; it stands on the sheet and so is upright however the piece lies.</summary>
internal static class PieceTexts
{
    // Own choice: smaller than any label, large enough for a pen.
    private const double MarkHeight = 5;
    private const double MarkGap = 6;

    /// <param name="pattern">The shape of the piece.</param>
    /// <param name="map">How the shape lies on the sheet.</param>
    /// <param name="name">The name.</param>
    /// <param name="below">What stands below it.</param>
    public static IEnumerable<DrawnText> Write(Pattern pattern, RigidMap map, string name, string below)
    {
        var circle = new FreeCircle(map.Apply(pattern.LabelSpot), pattern.LabelRadius)
            .ClearOf(map.Apply(pattern.Grain.From), map.Apply(pattern.Grain.To));
        foreach (var text in PieceLabel.Write(name, below, circle))
        {
            yield return text;
        }

        foreach (var drill in pattern.Drills)
        {
            var at = Grid.Snap(map.Apply(drill.At) + new Point2(MarkGap, MarkGap));
            yield return new DrawnText(DrawingLayers.DrawnMark, drill.Purpose, at, MarkHeight, 0, TextAnchor.Start);
        }
    }
}
