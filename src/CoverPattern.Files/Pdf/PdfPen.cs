using System;
using System.Globalization;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Pdf;

/// <summary>How a line is drawn on paper.</summary>
/// <param name="Colour">Colour as "#rrggbb".</param>
/// <param name="WidthMm">Width, millimetres; the true line is its middle.</param>
/// <param name="DrawnMm">Length of each dash, millimetres; 0 for an unbroken line.</param>
/// <param name="FreeMm">Length free between two dashes, millimetres.</param>
internal sealed record PdfPen(string Colour, double WidthMm, double DrawnMm = 0, double FreeMm = 0)
{
    /// <summary>The operators that choose it.</summary>
    internal string Operators => Components(Colour) + " RG " + PdfPage.Number(WidthMm, 3) + " w "
        + (DrawnMm > 0 ? $"[{PdfPage.Number(DrawnMm, 3)} {PdfPage.Number(FreeMm, 3)}] 0 d\n" : "[] 0 d\n");

    /// <summary>The pen of a layer, in its colour and width.</summary>
    internal static PdfPen Of(DrawingLayer layer) => new(layer.Colour, layer.LineWidth / 100.0, layer.IsDashed ? 10 : 0, layer.IsDashed ? 5 : 0);

    /// <summary>The operator that chooses the colour of areas and letters.</summary>
    internal static string Fill(string colour) => Components(colour) + " rg ";

    private static string Components(string colour)
    {
        string Part(int at) => PdfPage.Number(int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0, 3);
        return $"{Part(1)} {Part(3)} {Part(5)}";
    }
}
