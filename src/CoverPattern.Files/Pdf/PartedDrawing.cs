using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Pdf;

/// <summary>A drawing made ready to be shown part by part on many pages: each line and text with the box in which it lies.</summary>
internal sealed class PartedDrawing
{
    private readonly (ImmutableArray<Point2> Points, Box2 Box, PdfPen Pen)[] lines;
    private readonly (DrawnText Text, Box2 Box)[] texts;

    /// <param name="drawing">The drawing.</param>
    internal PartedDrawing(Drawing drawing)
    {
        lines = [.. drawing.LinesOnSheet().Select(line => (PdfDrawing.Open(line), Rings.Bounds(line.Points), PdfPen.Of(line.Layer)))];
        texts = [.. drawing.Texts.Select(text => (text, Rings.Bounds(DrawingExtent.Corners(text))))];
    }

    /// <summary>Draws what lies in a rectangle.</summary>
    /// <param name="page">The page.</param>
    /// <param name="area">The rectangle in the drawing.</param>
    /// <param name="corner">Where its lower left corner comes to lie on the page.</param>
    internal void Draw(PdfPage page, Box2 area, Point2 corner)
    {
        var shift = corner - area.Low;
        foreach (var (points, box, pen) in lines)
        {
            if (!MayTouch(box, area))
            {
                continue;
            }

            foreach (var part in BoxClip.Within(area, points))
            {
                page.Line([.. part.Select(point => point + shift)], isClosed: false, pen);
            }
        }

        var seen = texts.Where(entry => !entry.Box.IsApartFrom(area)).ToArray();
        if (seen.Length > 0)
        {
            page.Clipped(new Box2(corner, corner + (area.High - area.Low)), () => Array.ForEach(seen, entry => page.Text(entry.Text, shift)));
        }
    }

    /// <summary>Other than boxes that are apart those that touch may share a line.</summary>
    private static bool MayTouch(Box2 one, Box2 other) =>
        one.High.X >= other.Low.X && other.High.X >= one.Low.X && one.High.Y >= other.Low.Y && other.High.Y >= one.Low.Y;
}
