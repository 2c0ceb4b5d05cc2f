using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Writes the names of openings into them, and those of slits and zips beside them.</summary>
internal static class CoverMarkNames
{
    // Half of what a zip's line is wider than a seam's, millimetres on paper.
    internal const double ZipLine = 0.2;

    // A round rim has hundreds of steps: places beside so many of them, all round, are as good as all.
    private const int MostSteps = 24;

    private static readonly double[] Heights = [DomeDrawing.LargestText, 2.2, 1.9, 1.6, DomeDrawing.LeastText];

    /// <summary>Each name once a drawing, where there is room for it.</summary>
    /// <param name="marks">What is drawn, millimetres on paper.</param>
    /// <param name="faces">Rings of the faces drawn: no name goes over their edges.</param>
    /// <param name="beside">What is drawn beside the cover.</param>
    /// <returns>The names written, those without room, and all that names of facets must keep off.</returns>
    public static (ImmutableArray<FigureText> Texts, ImmutableArray<string> Unnamed, TakenPlaces Taken) Write(
        CoverMarks marks, IEnumerable<ImmutableArray<Point2>> faces, IEnumerable<FigureText> beside)
    {
        var taken = new TakenPlaces();
        taken.TakeLines(marks.Figures());
        var all = taken.Copy();
        foreach (var face in faces)
        {
            all.TakeEdges(face);
        }

        foreach (var text in beside)
        {
            all.Take(text.Box());
        }

        (string Name, FigureText? Text)[] names =
        [
            .. marks.Voids.GroupBy(one => one.Name, StringComparer.Ordinal).Select(opening => (opening.Key, Inside(opening.Key, [.. opening.Select(one => one.Ring)], all))),
            .. marks.Lines.Where(line => !line.IsRim && line.Name.Length > 0).GroupBy(line => line.Name, StringComparer.Ordinal)
                .Select(line => (line.Key, FreeText.First(Heights.SelectMany(height => Along([.. line], Text(line.Key, height))), all))),
        ];
        ImmutableArray<FigureText> texts = [.. names.Select(name => name.Text).OfType<FigureText>()];
        foreach (var text in texts)
        {
            taken.Take(text.Box());
        }

        return (texts, [.. names.Where(name => name.Text is null).Select(name => name.Name).Order(StringComparer.Ordinal)], taken);
    }

    /// <summary>A name in the opening, as large as has room, in its largest part if it can be; beside it where it is too small.</summary>
    private static FigureText? Inside(string name, ImmutableArray<Point2>[] rings, TakenPlaces taken)
    {
        var largest = rings.OrderByDescending(ring => Math.Round(Rings.SignedArea(ring), 3)).ToArray();
        return FreeText.First(Heights.SelectMany(height => largest.SelectMany(ring => FreeText.Inside(ring, Text(name, height)))), taken)
            ?? FreeText.First(Heights.SelectMany(height => Beside(largest[0], Text(name, height))), taken);
    }

    /// <summary>Places beside the steps of a ring, or some of them all round, the most level step first.</summary>
    private static IEnumerable<FigureText> Beside(ImmutableArray<Point2> ring, FigureText text) => ring.Select((corner, i) => (From: corner, To: ring[(i + 1) % ring.Length])).Where((_, i) => i % ((ring.Length / MostSteps) + 1) == 0)
        .OrderBy(step => Math.Round(Math.Abs(TextRoom.Readable(step.To - step.From)), 3)).SelectMany(step => FreeText.Along(step.From, step.To, text));

    /// <summary>Places beside the steps of lines, the longest step first.</summary>
    public static IEnumerable<FigureText> Along(IEnumerable<CoverLine> lines, FigureText text) => lines
        .SelectMany(line => line.Points.Skip(1).Select((point, i) => (From: line.Points[i], To: point, Line: line.IsZip ? ZipLine : 0)))
        .OrderByDescending(step => Math.Round(Point2.Distance(step.From, step.To), 3))
        .SelectMany(step => FreeText.Along(step.From, step.To, text, step.Line));

    private static FigureText Text(string name, double height) => new("opening", name, default, height, 0, TextAnchor.Middle);
}
