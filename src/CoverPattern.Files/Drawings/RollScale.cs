using System.Collections.Generic;
using System.Globalization;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>Marks along the lower edge of the roll: a short stroke every 100 mm, a long one with its number every metre.</summary>
internal static class RollScale
{
    private const int StrokesPerMetre = 10;
    private const double StrokeGap = 100;
    private const double Start = -8;
    private const double ShortStroke = 8;
    private const double LongStroke = 24;
    private const double TextHeight = 24;

    /// <param name="length">Length of the cloth, millimetres.</param>
    public static IEnumerable<DrawnLine> Lines(double length)
    {
        yield return Straight(new Point2(0, Start), new Point2(length, Start));
        for (var i = 0; i * StrokeGap <= length; i++)
        {
            var stroke = i % StrokesPerMetre == 0 ? LongStroke : ShortStroke;
            yield return Straight(new Point2(i * StrokeGap, Start), new Point2(i * StrokeGap, Start - stroke));
        }
    }

    /// <inheritdoc cref="Lines"/>
    public static IEnumerable<DrawnText> Texts(double length)
    {
        for (var metre = 0; metre * StrokesPerMetre * StrokeGap <= length; metre++)
        {
            var at = new Point2(metre * StrokesPerMetre * StrokeGap, Start - LongStroke - TextHeight);
            yield return new DrawnText(
                DrawingLayers.Scale, metre.ToString(CultureInfo.InvariantCulture) + " m", at, TextHeight, 0, TextAnchor.Middle);
        }
    }

    private static DrawnLine Straight(Point2 from, Point2 to) => new(DrawingLayers.Scale, [from, to], IsClosed: false);
}
