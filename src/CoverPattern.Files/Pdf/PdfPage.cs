using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays.Sheets;

namespace CoverPattern.Files.Pdf;

/// <summary>One page while it is drawn: millimetres from its lower left corner, y up.</summary>
/// <remarks>
/// A page may be 14,400 units long; a unit is 1/72 inch, or a multiple of it where a page is longer
/// [ISO 32000-1, 8.3.2.3 and annex C.2]: such pages need a reader that knows UserUnit (PDF 1.6).
/// </remarks>
internal sealed class PdfPage(SheetSize size)
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double MostUnits = 14_400;
    private const int Decimals = 5;

    private readonly StringBuilder content = new();

    /// <summary>Width and height, millimetres.</summary>
    internal SheetSize Size { get; } = size;

    /// <summary>How many 1/72 inches a unit of this page has.</summary>
    internal int UserUnit { get; } = Math.Max(1, (int)Math.Ceiling((Math.Max(size.WidthMm, size.HeightMm) * PointsPerMillimetre / MostUnits) - 1e-9));

    /// <summary>Units in a millimetre.</summary>
    internal double Scale => PointsPerMillimetre / UserUnit;

    /// <summary>What is drawn, as PDF operators; one unit is a millimetre.</summary>
    internal string Content() => string.Create(CultureInfo.InvariantCulture, $"{Number(Scale, 12)} 0 0 {Number(Scale, 12)} 0 0 cm\n1 J 1 j\n") + content;

    internal void Line(IReadOnlyList<Point2> points, bool isClosed, PdfPen pen)
    {
        content.Append(pen.Operators);
        for (var i = 0; i < points.Count; i++)
        {
            content.Append(Place(points[i])).Append(i == 0 ? " m\n" : " l\n");
        }

        content.Append(isClosed ? "s\n" : "S\n");
    }

    /// <summary>Writes a text as the drawings mean it: the middle of its capitals at its point.</summary>
    /// <param name="text">The text; its layer's colour is used.</param>
    /// <param name="shift">Added to its place, millimetres.</param>
    internal void Text(DrawnText text, Point2 shift)
    {
        var known = Helvetica.Known(text.Text);
        // A name in other letters takes more room as numbers than its own letters would have: it is written smaller.
        var height = text.Height * Math.Min(1, LetterWidth.Estimate(text.Text, 1) / Math.Max(Helvetica.Width(known), 1e-9));
        var width = Helvetica.Width(known) * height;
        var left = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        var map = RigidMap.FromDegrees(text.TurnDegrees, text.At + shift, mirrored: false);
        content.Append(PdfPen.Fill(text.Layer.Colour)).Append("BT ")
            .Append(CultureInfo.InvariantCulture, $"{Number(map.Cosine, 9)} {Number(map.Sine, 9)} {Number(-map.Sine, 9)} {Number(map.Cosine, 9)} ")
            .Append(Place(map.Apply(new Point2(left, -height / 2)))).Append(" Tm ").Append(Helvetica.Show(known, Number(height / Helvetica.CapitalHeight, Decimals))).Append("ET\n");
    }

    /// <summary>Lets only what lies in a rectangle be seen of what is drawn inside.</summary>
    internal void Clipped(Box2 box, Action draw)
    {
        content.Append("q ").Append(Place(box.Low)).Append(' ').Append(Place(box.High - box.Low)).Append(" re W n\n");
        draw();
        content.Append("Q\n");
    }

    /// <summary>Fills a ring.</summary>
    internal void Fill(ImmutableArray<Point2> ring, string colour)
    {
        content.Append(PdfPen.Fill(colour));
        for (var i = 0; i < ring.Length; i++)
        {
            content.Append(Place(ring[i])).Append(i == 0 ? " m\n" : " l\n");
        }

        content.Append("f\n");
    }

    private static string Place(Point2 point) => Number(point.X, Decimals) + " " + Number(point.Y, Decimals);

    internal static string Number(double value, int decimals) => CoordinateText.Write(value, decimals);
}
