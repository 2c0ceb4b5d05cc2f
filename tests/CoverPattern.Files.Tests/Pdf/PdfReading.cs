using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace CoverPattern.Files.Tests.Pdf;

/// <summary>A page of a PDF as PdfPig reads it, in millimetres.</summary>
/// <param name="Width">Width of the page.</param>
/// <param name="Height">Height of the page.</param>
/// <param name="Lines">Every stroked line, the closed ones with their first corner repeated; with its colour's parts from 0 to 1.</param>
/// <param name="Words">All letters one after the other.</param>
internal sealed record PdfReading(double Width, double Height, ImmutableArray<(string Colour, ImmutableArray<Point2> Points)> Lines, string Words)
{
    private const double MillimetresPerPoint = 25.4 / 72;

    public static ImmutableArray<PdfReading> Read(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(Read)];
    }

    private static PdfReading Read(Page page)
    {
        // PdfPig tells sizes and places in units of the page; how long these are stands in the page's dictionary.
        var unit = page.Dictionary.TryGet(NameToken.Create("UserUnit"), out NumericToken number) ? number.Double : 1;
        var scale = MillimetresPerPoint * unit;
        return new PdfReading(
            page.MediaBox.Bounds.Width * scale,
            page.MediaBox.Bounds.Height * scale,
            [.. page.Paths.Where(path => path.IsStroked).SelectMany(path => path.Select(part => (path.StrokeColor?.ToString() ?? "none", Points(part, scale))))],
            string.Concat(page.Letters.Select(letter => letter.Value)));
    }

    private static ImmutableArray<Point2> Points(PdfSubpath part, double scale)
    {
        var points = new List<Point2>();
        foreach (var command in part.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    points.Add(At(move.Location, scale));
                    break;
                case PdfSubpath.Line line:
                    points.Add(At(line.To, scale));
                    break;
                case PdfSubpath.Close:
                    points.Add(points[0]);
                    break;
                default:
                    Assert.Fail($"A line of ours is straight, not {command.GetType().Name}.");
                    break;
            }
        }

        return [.. points];
    }

    private static Point2 At(PdfPoint point, double scale) => new(point.X * scale, point.Y * scale);
}
