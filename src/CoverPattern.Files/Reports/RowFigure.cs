using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>Draws a row, or a part of it, large enough for the name of every piece and every seam.</summary>
internal sealed class RowFigure
{
    private const double Gap = 1;
    private const double Margin = 1.5;

    // A rim of many steps is tried at its longest ones.
    private const int MostTries = 90;

    private static readonly double[] PanelHeights = [3.2, 2.7, 2.3, 1.9, 1.6];
    private static readonly double[] SeamHeights = [2, 1.8, 1.6, 1.4];

    private readonly Subdivision cut;
    private readonly RowFace[] faces;
    private readonly TakenPlaces taken = new();
    private readonly List<FigureLine> lines = [];
    private readonly List<FigureText> texts = [];
    private readonly List<string> unnamed = [];

    private RowFigure(Subdivision cut, IEnumerable<RowFace> faces, double ratio)
    {
        this.cut = cut;
        this.faces = [.. faces.Select(face => face.Sized(ratio))];
    }

    /// <param name="result">Tells the seams.</param>
    /// <param name="strip">The row.</param>
    /// <param name="part">The faces to be drawn.</param>
    /// <param name="ratio">Millimetres on paper for one of the strip.</param>
    /// <returns>The figure, and names that found no room.</returns>
    public static (Figure Figure, ImmutableArray<string> Unnamed) Draw(Result result, RowStrip strip, ImmutableArray<RowFace> part, double ratio)
    {
        var figure = new RowFigure(result.Cut, part, ratio);
        figure.DrawLines();
        figure.DrawFront(strip, ratio);
        figure.NameSeams();
        figure.NameOpenings(PieceNames.ByRim(result));
        figure.NamePanels();
        figure.NameRims();
        var reach = Rings.Bounds([.. figure.lines.SelectMany(line => line.Points), .. figure.texts.SelectMany(text => text.Box())]);
        var margin = new Point2(Margin, Margin);
        return (
            new Figure(Title(strip, part), new Box2(reach.Low - margin, reach.High + margin), [.. figure.lines], [.. figure.texts]),
            [.. figure.unnamed.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)]);
    }

    private static string Title(RowStrip strip, ImmutableArray<RowFace> part)
    {
        string[] facets = [.. part.Where(face => face.IsFacet).Select(face => face.Label)];
        var span = facets.Length == 1 ? facets[0] : $"{facets[0]} to {facets[^1]}";
        return $"Row {strip.Name}, {span}, {(strip.IsCap ? "seen from outside, from above" : "rolled off, seen from outside")}";
    }

    private void DrawLines()
    {
        foreach (var face in faces.Where(face => !face.Corners.IsEmpty))
        {
            lines.Add(new FigureLine("part", face.Corners, IsClosed: true));
            taken.TakeEdges(face.Corners);
        }

        lines.AddRange(Edges().Where(edge => edge.Arc.Role is not (EdgeRole.Fold or EdgeRole.Rim))
            .Select(edge => new FigureLine(edge.Arc.Role == EdgeRole.Hem ? "hem" : "seam", [edge.From, edge.To], IsClosed: false)));
        FigureLine[] marks = [.. faces.SelectMany(face => face.Marks.Figures())];
        lines.AddRange(marks);
        taken.TakeLines(marks);
    }

    /// <summary>A mark where the front passes, above a strip and beside a cap.</summary>
    private void DrawFront(RowStrip strip, double ratio)
    {
        var bounds = Rings.Bounds(faces.SelectMany(face => face.Reach));
        foreach (var at in strip.Front.Select(front => ratio * front).Where(front => strip.IsCap || (front >= bounds.Low.X && front <= bounds.High.X)))
        {
            var tip = strip.IsCap ? new Point2(at + Gap, 0) : new Point2(at, bounds.High.Y + Gap);
            var away = strip.IsCap ? new Point2(1, 0) : new Point2(0, 1);
            var wing = away.QuarterTurned();
            ImmutableArray<Point2> head = [tip, tip + (2 * away) - wing, tip + (2 * away) + wing];
            lines.Add(new FigureLine("head", head, IsClosed: true));
            taken.Take(head);
            Add("front", [new FigureText("front", "FRONT", tip + (3 * away) + (strip.IsCap ? default : new Point2(0, 0.6)), 1.8, 0, strip.IsCap ? TextAnchor.Start : TextAnchor.Middle)]);
        }
    }

    private void NameSeams()
    {
        var named = new HashSet<(string, Point2)>();
        foreach (var (arc, from, to) in Edges().Where(edge => edge.Arc.Second is not null && edge.Arc.Role != EdgeRole.Fold))
        {
            // Both faces beside a seam draw it; where a strip begins and ends, each end bears the name.
            var middle = Point2.Between(from, to, 0.5);
            if (named.Add((arc.Label, new Point2(Math.Round(middle.X, 1), Math.Round(middle.Y, 1)))))
            {
                Add(arc.Label, SeamHeights.SelectMany(height => FreeText.Along(from, to, Text("seam-name", arc.Label, height), arc.MakeUp?.Form == MakeUpForm.Zip ? CoverMarkNames.ZipLine : 0)));
            }
        }
    }

    /// <summary>The name of each opening in its largest part; of a window what fills it and its rim. Of a slit beside it.</summary>
    private void NameOpenings(Dictionary<string, string> fills)
    {
        foreach (var opening in faces.SelectMany(face => face.Marks.Voids).GroupBy(one => one.Name, StringComparer.Ordinal))
        {
            var rim = opening.First().Rim;
            var name = rim != opening.Key && fills.TryGetValue(rim, out var fill) ? $"{fill} {rim}" : opening.Key;
            var rings = opening.Select(one => one.Ring).OrderByDescending(ring => Math.Round(Rings.SignedArea(ring), 3)).ToArray();
            Add(name, SeamHeights.SelectMany(height => rings.SelectMany(ring => FreeText.Inside(ring, Text("opening", name, height)))));
        }

        foreach (var slit in faces.SelectMany(face => face.Marks.Lines).Where(line => line.Style == CoverLine.Slit).GroupBy(line => line.Name, StringComparer.Ordinal))
        {
            Add(slit.Key, SeamHeights.SelectMany(height => CoverMarkNames.Along(slit, Text("opening", slit.Key, height))));
        }
    }

    /// <summary>Rims in several arcs, each where it has room: the table of seams names them too.</summary>
    private void NameRims()
    {
        foreach (var rim in faces.SelectMany(face => face.Marks.Lines).Where(line => line.IsRim && line.Name.Length > 0).GroupBy(line => line.Name, StringComparer.Ordinal))
        {
            var text = FreeText.First(SeamHeights.SelectMany(height => CoverMarkNames.Along(rim, Text("seam-name", rim.Key, height)).Take(MostTries)), taken);
            texts.AddRange(text is null ? [] : [text]);
        }
    }

    /// <summary>One name a piece, as large as fits into one of its faces, the one nearest to its middle first.</summary>
    private void NamePanels()
    {
        foreach (var panel in faces.Where(face => !face.Corners.IsEmpty).GroupBy(face => face.Panel, StringComparer.Ordinal))
        {
            var shown = panel.Any(face => face.IsFacet) ? panel.Where(face => face.IsFacet).ToArray() : [.. panel];
            var middle = (1.0 / shown.Length) * shown.Select(face => face.Middle).Aggregate((left, right) => left + right);
            var nearest = shown.OrderBy(face => Point2.Distance(face.Middle, middle)).ThenBy(face => face.Label, StringComparer.Ordinal).ToArray();
            Add(panel.Key, PanelHeights.SelectMany(height => nearest.SelectMany(face => FreeText.Inside(face.Corners, Text("facet", panel.Key, height)))));
        }
    }

    private IEnumerable<(Arc Arc, Point2 From, Point2 To)> Edges() => faces.SelectMany(face => face.Corners
        .Select((corner, i) => (cut.Arcs[face.Arcs[i]], corner, face.Corners[(i + 1) % face.Corners.Length])));

    private void Add(string name, IEnumerable<FigureText> tries)
    {
        if (FreeText.First(tries, taken) is { } text)
        {
            texts.Add(text);
        }
        else
        {
            unnamed.Add(name);
        }
    }

    private static FigureText Text(string style, string text, double height) => new(style, text, default, height, 0, TextAnchor.Middle);
}
