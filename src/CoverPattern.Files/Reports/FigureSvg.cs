using System;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Writes a figure into the page as inline SVG, true to its millimetres on paper.</summary>
internal static class FigureSvg
{
    // A thousandth of a millimetre on paper.
    private const int Decimals = 3;

    // Height of the capitals over the size of the font, as common screen fonts have it (0.72 to 0.73).
    private const double CapitalHeight = 0.72;

    public static void Write(PageWriter page, Figure figure)
    {
        var window = figure.Window;
        page.Open(
            "svg",
            ("class", "figure"),
            ("role", "img"),
            ("width", Number(window.Width) + "mm"),
            ("height", Number(window.Height) + "mm"),
            ("viewBox", $"{Number(window.Low.X)} {Number(-window.High.Y)} {Number(window.Width)} {Number(window.Height)}"));
        page.Line("title", figure.Name);
        foreach (var line in figure.Lines)
        {
            page.Empty(line.IsClosed ? "polygon" : "polyline", ("class", line.Style), ("points", string.Join(' ', line.Points.Select(Place))));
        }

        foreach (var text in figure.Texts)
        {
            Write(page, text);
        }

        page.Close();
    }

    private static void Write(PageWriter page, FigureText text)
    {
        // The middle of the capitals stands at the point, SVG wants the line on which they stand.
        var down = RigidMap.FromDegrees(text.TurnDegrees, text.At, mirrored: false).Apply(new Point2(0, -text.Height / 2));
        var (x, y) = (Number(down.X), Number(-down.Y));
        page.Line(
            "text",
            text.Text,
            ("class", text.Style),
            ("x", x),
            ("y", y),
            ("transform", $"rotate({Number(-text.TurnDegrees)} {x} {y})"),
            ("font-size", Number(text.Height / CapitalHeight)),
            ("text-anchor", text.Anchor switch
            {
                TextAnchor.Start => "start",
                TextAnchor.Middle => "middle",
                TextAnchor.End => "end",
                _ => throw new ArgumentOutOfRangeException(nameof(text), text.Anchor, "An anchor is start, middle or end."),
            }));
    }

    private static string Place(Point2 point) => Number(point.X) + "," + Number(-point.Y);

    private static string Number(double value) => CoordinateText.Write(value, Decimals);
}
