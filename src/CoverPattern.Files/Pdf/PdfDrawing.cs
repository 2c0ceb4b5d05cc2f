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
        var lines = drawing.LinesOnSheet().ToLookup(line => line.Layer);
        foreach (var layer in DrawingLayers.All)
        {
            foreach (var line in lines[layer])
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

    /// <summary>The corners of a line, of a closed one with the first repeated.</summary>
    internal static ImmutableArray<Point2> Open(DrawnLine line) => line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points;
}
