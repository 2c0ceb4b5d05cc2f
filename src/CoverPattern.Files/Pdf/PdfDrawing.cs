using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Pdf;

/// <summary>Puts drawings on pages in true size.</summary>
internal static class PdfDrawing
{
    // White border round a drawing that has a page to itself, millimetres.
    private const double Border = 10;

    /// <summary>A page as large as the drawing.</summary>
    internal static PdfPage Whole(Drawing drawing)
    {
        var extent = DrawingExtent.Measure(drawing);
        var page = new PdfPage(new SheetSize(Math.Ceiling(extent.Width + (2 * Border)), Math.Ceiling(extent.Height + (2 * Border))));
        var shift = new Point2(Border, Border) - extent.Low;
        foreach (var layer in DrawingLayers.All)
        {
            foreach (var line in drawing.LinesOnSheet().Where(line => line.Layer == layer))
            {
                page.Line([.. line.Points.Select(point => point + shift)], line.IsClosed, PdfPen.Of(layer));
            }

            foreach (var text in drawing.Texts.Where(text => text.Layer == layer))
            {
                page.Text(text, shift);
            }
        }

        return page;
    }

    /// <summary>Draws what of a drawing lies in a rectangle.</summary>
    /// <param name="page">The page.</param>
    /// <param name="drawing">The drawing.</param>
    /// <param name="area">The rectangle in the drawing.</param>
    /// <param name="corner">Where its lower left corner comes to lie on the page.</param>
    internal static void Part(PdfPage page, Drawing drawing, Box2 area, Point2 corner)
    {
        var shift = corner - area.Low;
        foreach (var line in drawing.LinesOnSheet())
        {
            foreach (var part in BoxClip.Within(area, Open(line)))
            {
                page.Line([.. part.Select(point => point + shift)], isClosed: false, PdfPen.Of(line.Layer));
            }
        }

        var texts = drawing.Texts.Where(text => !Rings.Bounds(DrawingExtent.Corners(text)).IsApartFrom(area)).ToArray();
        if (texts.Length > 0)
        {
            page.Clipped(new Box2(corner, corner + (area.High - area.Low)), () => Array.ForEach(texts, text => page.Text(text, shift)));
        }
    }

    /// <summary>The corners of a line, of a closed one with the first repeated.</summary>
    internal static ImmutableArray<Point2> Open(DrawnLine line) => line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points;
}
