using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>Draws a lay in strips as wide as the page, each with its metres along the roll.</summary>
internal static class LayFigure
{
    // Own choices, millimetres on paper.
    private const double StripWidth = 178;
    // Two strips stand on a page.
    private const double HighestStrip = 112;
    private const double Beside = 3;
    private const double Below = 6;
    private const double TextHeight = 1.9;
    private const double Dot = 0.6;

    // Names smaller than this ask for a larger scale; names smaller than the second are not written.
    private const double ReadableText = 1.4;
    private const double LeastText = 1.2;

    private const double RoundStrip = 100;
    private const double MarkEvery = 500;
    private const double MarkEveryFeet = 609.6;

    private static readonly double[] Scales = [30, 25, 22, 20, 18, 15];

    private static readonly ImmutableArray<DrawingLayer> Shown =
        [DrawingLayers.Roll, DrawingLayers.Usable, DrawingLayers.Flaw, DrawingLayers.Scale, DrawingLayers.Fold, DrawingLayers.InnerCut, DrawingLayers.Cut];

    /// <summary>One figure a strip, with what its keys stand for.</summary>
    /// <param name="lay">The lay.</param>
    /// <param name="set">The pieces it places.</param>
    /// <param name="ruler">How lengths are printed.</param>
    public static (ImmutableArray<(Figure Figure, ImmutableArray<string> Keys)> Strips, double Scale) Draw(Lay lay, PieceSet set, Ruler ruler)
    {
        var laid = LaidPiece.Of(lay, set);
        var scale = Scale(lay, laid);
        var strips = Math.Max(1, (int)Math.Ceiling(lay.LengthMm / (StripWidth * scale)));
        var length = Math.Ceiling(lay.LengthMm / strips / RoundStrip) * RoundStrip;
        var lines = LayDrawing.Draw(lay, set, PaperNotes.None with { IsInInches = ruler.IsInches }).LinesOnSheet().Where(line => Shown.Contains(line.Layer))
            .Select(line => (line, Low: line.Points.Min(p => p.X), High: line.Points.Max(p => p.X))).ToArray();
        return ([.. Enumerable.Range(0, strips).Select(i =>
        {
            var (low, high) = (i * length, Math.Min((i + 1) * length, lay.LengthMm));
            var seen = lines.Where(entry => entry.High >= low - (Beside * scale) && entry.Low <= high + (Beside * scale)).Select(entry => entry.line);
            var window = new Box2(new Point2(low / scale, 0), new Point2(high / scale, lay.RollWidthMm / scale));
            return Strip(seen, laid, window, (scale, lay.FaceDown, ruler));
        })], scale);
    }

    private static (Figure Figure, ImmutableArray<string> Keys) Strip(IEnumerable<DrawnLine> lines, ImmutableArray<LaidPiece> laid, Box2 window, (double Scale, bool IsFaceDown, Ruler Ruler) look)
    {
        var scale = look.Scale;
        var near = laid.Where(piece => piece.High / scale > window.Low.X && piece.Low / scale < window.High.X).ToArray();
        var (from, to) = (look.Ruler.Long(window.Low.X * scale), look.Ruler.Long(window.High.X * scale));
        var (names, keys) = Names(near, window, scale);
        var figure = new Figure(
            $"{from} {look.Ruler.LongUnit} to {to} {look.Ruler.LongUnit} from the cut end; pieces seen from {(look.IsFaceDown ? "inside, as the cloth lies face down" : "outside")}",
            new Box2(window.Low - new Point2(Beside, Below), window.High + new Point2(Beside, 1)),
            [
                .. lines.Select(line => new FigureLine(SmallPattern.Style(line.Layer), ImmutableArray.CreateRange(line.Points, p => (1 / scale) * p), line.IsClosed)),
                .. near.SelectMany(piece => piece.Grain(1 / scale)),
                .. near.Select(piece => Diamond((1 / scale) * piece.FirstCorner)),
                new FigureLine("break", [window.Low, new Point2(window.Low.X, window.High.Y)], IsClosed: false),
                new FigureLine("break", [new Point2(window.High.X, window.Low.Y), window.High], IsClosed: false),
            ],
            [.. names, .. Marks(window, scale, look.Ruler)]);
        return (figure, keys);
    }

    /// <summary>Names of pieces; where a piece is too small for its name, a number for it.</summary>
    private static (ImmutableArray<FigureText> Texts, ImmutableArray<string> Keys) Names(LaidPiece[] pieces, Box2 window, double scale)
    {
        var (texts, keys) = (ImmutableArray.CreateBuilder<FigureText>(), ImmutableArray.CreateBuilder<string>());
        var sides = TextLimit.Between(window.Low.X, window.High.X);
        foreach (var piece in pieces)
        {
            // A disc has room for writing up to the mark of its first corner, not beyond.
            TextLimit[] limits = piece.Pattern.Facets.IsEmpty ? [.. sides, BesideMark(piece, scale)] : sides;
            var key = Printed.Count(keys.Count + 1);
            if (piece.Name(1 / scale, LeastText, limits) is { } name)
            {
                texts.Add(name);
            }
            else if (piece.Key(key, 1 / scale, LeastText, limits) is { } number)
            {
                texts.Add(number);
                keys.Add($"{key} is {piece.Label}");
            }
        }

        return (texts.ToImmutable(), keys.ToImmutable());
    }

    private static TextLimit BesideMark(LaidPiece piece, double scale)
    {
        var (corner, inward) = ((1 / scale) * piece.FirstCorner, (piece.LabelSpot - piece.FirstCorner).Unit());
        return new TextLimit(corner + (Dot * inward), inward);
    }

    private static FigureLine Diamond(Point2 at) => new(
        "dot", [at + new Point2(Dot, 0), at + new Point2(0, Dot), at - new Point2(Dot, 0), at - new Point2(0, Dot)], IsClosed: true);

    private static IEnumerable<FigureText> Marks(Box2 window, double scale, Ruler ruler) => Places(window, scale, ruler).Select(at => new FigureText(
        "note", ruler.IsInches ? Printed.Number(2 * at / MarkEveryFeet, 0) + " ft" : Printed.Number(at / 1000, 1) + " m", new Point2(at / scale, -3.6), TextHeight, 0, TextAnchor.Middle));

    private static IEnumerable<double> Places(Box2 window, double scale, Ruler ruler)
    {
        var every = ruler.IsInches ? MarkEveryFeet : MarkEvery;
        for (var at = Math.Ceiling(window.Low.X * scale / every) * every; at <= window.High.X * scale; at += every)
        {
            yield return at;
        }
    }

    /// <summary>The smallest drawing in which every name can be read that can be read in the largest.</summary>
    private static double Scale(Lay lay, ImmutableArray<LaidPiece> laid)
    {
        var shapes = laid.DistinctBy(piece => (piece.Pattern.Id, piece.Label.Length))
            .Where(piece => piece.Name(1 / Scales[^1], ReadableText) is not null).ToArray();
        return Scales.FirstOrDefault(
            scale => lay.RollWidthMm <= HighestStrip * scale && shapes.All(piece => piece.Name(1 / scale, ReadableText) is not null),
            Scales[^1]);
    }
}
