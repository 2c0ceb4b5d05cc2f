using System.Collections.Generic;
using System.Globalization;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>Marks along the lower edge of the roll: a short stroke every 100 mm, a long one with its number every metre; for a shop that measures in feet every 3 inches and every foot.</summary>
/// <param name="IsInFeet">Whether the shop measures in feet.</param>
internal sealed record RollScale(bool IsInFeet)
{
    // Exact by definition: international yard and pound agreement, 1959.
    private const double MillimetresPerFoot = 304.8;
    private const double MillimetresPerMetre = 1000;
    private const double Start = -8;
    private const double ShortStroke = 8;
    private const double LongStroke = 24;
    private const double TextHeight = 24;

    /// <summary>From number to number, millimetres.</summary>
    public double Step => IsInFeet ? MillimetresPerFoot : MillimetresPerMetre;

    private int StrokesPerStep => IsInFeet ? 4 : 10;

    /// <summary>The line, and its strokes.</summary>
    /// <param name="length">Length of the cloth, millimetres.</param>
    public IEnumerable<DrawnLine> Lines(double length)
    {
        yield return Straight(new Point2(0, Start), new Point2(length, Start));
        for (var i = 0; i * Step / StrokesPerStep <= length; i++)
        {
            var (at, stroke) = (i * Step / StrokesPerStep, i % StrokesPerStep == 0 ? LongStroke : ShortStroke);
            yield return Straight(new Point2(at, Start), new Point2(at, Start - stroke));
        }
    }

    /// <summary>The numbers at the long strokes.</summary>
    /// <param name="length">Length of the cloth, millimetres.</param>
    public IEnumerable<DrawnText> Texts(double length)
    {
        for (var number = 0; number * Step <= length; number++)
        {
            var at = new Point2(number * Step, Start - LongStroke - TextHeight);
            yield return new DrawnText(
                DrawingLayers.Scale, number.ToString(CultureInfo.InvariantCulture) + (IsInFeet ? " ft" : " m"), at, TextHeight, 0, TextAnchor.Middle);
        }
    }

    private static DrawnLine Straight(Point2 from, Point2 to) => new(DrawingLayers.Scale, [from, to], IsClosed: false);
}
