using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>The band over a drawing: the test square and, beside it, what the drawing shows.</summary>
internal static class SheetHead
{
    /// <summary>Side of the test square, millimetres.</summary>
    public const double SquareSide = 100;

    private const double TextHeight = 24;
    private const double SmallTextHeight = 12;
    private const double TextStart = SquareSide + 40;

    public static DrawnLine Square(Point2 corner) => new(
        DrawingLayers.TestSquare,
        [
            corner, corner + new Point2(SquareSide, 0),
            corner + new Point2(SquareSide, SquareSide), corner + new Point2(0, SquareSide),
        ],
        IsClosed: true);

    /// <param name="corner">Lower left corner of the test square.</param>
    /// <param name="title">First line.</param>
    /// <param name="below">Smaller lines below it, at most two.</param>
    public static ImmutableArray<DrawnText> Texts(Point2 corner, string title, ImmutableArray<string> below) =>
    [
        new DrawnText(
            DrawingLayers.TestSquare, "100 mm", corner + new Point2(SquareSide / 2, SquareSide / 2), SmallTextHeight, 0, TextAnchor.Middle),
        new DrawnText(
            DrawingLayers.Title, title, corner + new Point2(TextStart, SquareSide - (TextHeight / 2)), TextHeight, 0, TextAnchor.Start),
        .. below.Select((line, index) => new DrawnText(
            DrawingLayers.Title, line, corner + new Point2(TextStart, 48 - (28 * index)), SmallTextHeight, 0, TextAnchor.Start)),
    ];
}
