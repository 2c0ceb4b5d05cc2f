using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Svg;

/// <summary>Writes a drawing as SVG in true size: one unit is one millimetre, one group a layer.</summary>
/// <remarks>
/// SVG's y runs down, so every y is written with the other sign; texts then stand upright. Inserted blocks are written
/// out where they lie: many cutting programs do not know inserted figures.
/// </remarks>
public static class SvgWriter
{
    internal const string Namespace = "http://www.w3.org/2000/svg";

    // A hundred thousandth of a millimetre: far below a step of the grid.
    private const int Decimals = 5;

    // Free space round the drawing, millimetres.
    private const double Margin = 20;

    /// <returns>The file in UTF-8 with "\n" line ends; the same bytes for the same drawing.</returns>
    public static byte[] Write(Drawing drawing)
    {
        using var stream = new MemoryStream();
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };
        using (var xml = XmlWriter.Create(stream, settings))
        {
            WriteSheet(xml, drawing);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteSheet(XmlWriter xml, Drawing drawing)
    {
        var extent = DrawingExtent.Measure(drawing);
        var (left, top) = (Math.Floor(extent.Low.X - Margin), Math.Ceiling(extent.High.Y + Margin));
        var (width, height) = (Math.Ceiling(extent.High.X + Margin) - left, top - Math.Floor(extent.Low.Y - Margin));
        xml.WriteStartElement("svg", Namespace);
        xml.WriteAttributeString("width", Number(width) + "mm");
        xml.WriteAttributeString("height", Number(height) + "mm");
        xml.WriteAttributeString("viewBox", $"{Number(left)} {Number(-top)} {Number(width)} {Number(height)}");
        xml.WriteElementString("title", Namespace, PlainWords.Of(drawing.Title));
        var lines = drawing.LinesOnSheet().ToLookup(line => line.Layer.Name);
        var texts = drawing.Texts.ToLookup(text => text.Layer.Name);
        foreach (var layer in DrawingLayers.All.Where(layer => lines.Contains(layer.Name) || texts.Contains(layer.Name)))
        {
            WriteLayer(xml, layer, lines[layer.Name], texts[layer.Name]);
        }

        xml.WriteEndElement();
    }

    private static void WriteLayer(XmlWriter xml, DrawingLayer layer, IEnumerable<DrawnLine> lines, IEnumerable<DrawnText> texts)
    {
        xml.WriteStartElement("g", Namespace);
        xml.WriteAttributeString("id", layer.Name);
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", layer.Colour);
        xml.WriteAttributeString("stroke-width", layer.Use == LayerUse.Cut ? "1" : "0.7");
        // A line of true width would vanish on a screen that shows ten metres: this one keeps its width in screen dots.
        xml.WriteAttributeString("vector-effect", "non-scaling-stroke");
        if (layer.IsDashed)
        {
            xml.WriteAttributeString("stroke-dasharray", "10 5");
        }

        foreach (var line in lines)
        {
            WriteLine(xml, line);
        }

        foreach (var text in texts)
        {
            SvgText.Write(xml, text, Number);
        }

        xml.WriteEndElement();
    }

    private static void WriteLine(XmlWriter xml, DrawnLine line)
    {
        var path = new StringBuilder();
        foreach (var point in line.Points)
        {
            path.Append(path.Length == 0 ? "M" : " L").Append(Place(point));
        }

        xml.WriteStartElement("path", Namespace);
        xml.WriteAttributeString("d", path.Append(line.IsClosed ? " Z" : "").ToString());
        xml.WriteEndElement();
    }

    private static string Place(Point2 point) => string.Create(CultureInfo.InvariantCulture, $"{Number(point.X)} {Number(-point.Y)}");

    private static string Number(double value) => CoordinateText.Write(value, Decimals);
}
