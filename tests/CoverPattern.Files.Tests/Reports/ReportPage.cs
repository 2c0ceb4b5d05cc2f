using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Reports;

/// <summary>The report as an XML reader sees it.</summary>
internal sealed class ReportPage
{
    public ReportPage(Result result)
    {
        Bytes = ReportFile.Write(result);
        using var reader = XmlReader.Create(new MemoryStream(Bytes), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        Root = XDocument.Load(reader).Root!;
    }

    public byte[] Bytes { get; }

    public string Text => Encoding.UTF8.GetString(Bytes);

    public XElement Root { get; }

    public IEnumerable<XElement> OfClass(string name) =>
        Root.Descendants().Where(element => ((string?)element.Attribute("class") ?? "").Split(' ').Contains(name));

    /// <summary>Plan, front, side, spread plan.</summary>
    public XElement[] Views => [.. OfClass("view")];

    /// <summary>The part of the page from a heading to the next.</summary>
    public IEnumerable<XElement> Section(string heading) => Root.Descendants("h2").Single(h2 => h2.Value == heading)
        .ElementsAfterSelf().TakeWhile(element => element.Name != "h2");

    public static string[] Texts(XElement part, string kind) =>
        [.. part.Descendants("text").Where(text => (string?)text.Attribute("class") == kind).Select(text => text.Value)];

    /// <summary>The box of a text of a drawing; a letter of a bold sans serif is taken as 0.6 of the font's size wide, its capitals 0.72 high.</summary>
    public static Point2[] Box(XElement text)
    {
        var (x, y, size) = (Number(text, "x"), Number(text, "y"), Number(text, "font-size"));
        var width = 0.6 * size * text.Value.Length;
        var start = (string?)text.Attribute("text-anchor") switch { "start" => 0, "middle" => -width / 2, _ => -width };
        var turn = ((string)text.Attribute("transform")!)["rotate(".Length..].Split(' ')[0];
        var map = RigidMap.FromDegrees(double.Parse(turn, CultureInfo.InvariantCulture), new Point2(x, y), mirrored: false);
        return [.. map.Apply([new(start, -0.72 * size), new(start + width, -0.72 * size), new(start + width, 0), new(start, 0)])];
    }

    /// <summary>The corners of a polygon of a drawing, y down.</summary>
    public static Point2[] Corners(XElement polygon) => [.. ((string)polygon.Attribute("points")!).Split(' ').Select(pair => pair.Split(','))
        .Select(pair => new Point2(double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];

    /// <summary>Whether two rectangles share area: sampled densely, so that the test shares no code with what it tests.</summary>
    public static bool Overlap(Point2[] left, Point2[] right)
    {
        const int Steps = 12;
        return Inner(left).Any(point => Holds(right, point)) || Inner(right).Any(point => Holds(left, point));

        static IEnumerable<Point2> Inner(Point2[] box) =>
            from i in Enumerable.Range(0, Steps + 1)
            from j in Enumerable.Range(0, Steps + 1)
            select box[0] + ((double)i / Steps * (box[1] - box[0])) + ((double)j / Steps * (box[3] - box[0]));

        static bool Holds(Point2[] box, Point2 point)
        {
            var sides = box.Select((corner, i) => Point2.Cross(box[(i + 1) % box.Length] - corner, point - corner)).ToArray();
            return sides.All(side => side > 1e-6) || sides.All(side => side < -1e-6);
        }
    }

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}
