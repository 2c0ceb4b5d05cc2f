using System;
using System.Xml;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Svg;

/// <summary>Writing in SVG: kept as text, so that it can be searched and changed.</summary>
internal static class SvgText
{
    // Height of the capitals over the size of the font, as common screen fonts have it (0.72 to 0.73).
    private const double CapitalHeight = 0.72;

    /// <param name="xml">What it is written to.</param>
    /// <param name="text">The text.</param>
    /// <param name="number">Writes a number.</param>
    public static void Write(XmlWriter xml, DrawnText text, Func<double, string> number)
    {
        // The middle of the capitals stands at the point, SVG wants the line on which they stand.
        var down = RigidMap.FromDegrees(text.TurnDegrees, text.At, mirrored: false).Apply(new Point2(0, -text.Height / 2));
        var (x, y) = (number(down.X), number(-down.Y));
        xml.WriteStartElement("text", SvgWriter.Namespace);
        xml.WriteAttributeString("x", x);
        xml.WriteAttributeString("y", y);
        if (text.TurnDegrees != 0)
        {
            xml.WriteAttributeString("transform", $"rotate({number(-text.TurnDegrees)} {x} {y})");
        }

        xml.WriteAttributeString("font-size", number(text.Height / CapitalHeight));
        xml.WriteAttributeString("font-family", "sans-serif");
        xml.WriteAttributeString("text-anchor", Anchor(text.Anchor));
        xml.WriteAttributeString("fill", text.Layer.Colour);
        xml.WriteAttributeString("stroke", "none");
        xml.WriteString(PlainWords.Of(text.Text));
        xml.WriteEndElement();
    }

    private static string Anchor(TextAnchor anchor) => anchor switch
    {
        TextAnchor.Start => "start",
        TextAnchor.Middle => "middle",
        TextAnchor.End => "end",
        _ => throw new ArgumentOutOfRangeException(nameof(anchor), anchor, "An anchor is start, middle or end."),
    };
}
