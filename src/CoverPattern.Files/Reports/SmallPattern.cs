using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>A pattern made small enough for the page; all in millimetres on paper.</summary>
internal sealed class SmallPattern(Pattern pattern, double ratio)
{
    // Bars of notches reach out of the cloth and arrows are large; true ones would vanish on paper.
    internal const double NotchBeyond = 1;
    private const double ArrowLength = 2.2;
    private const double ArrowHalfWidth = 0.7;

    public ImmutableArray<Point2> CutLine { get; } = Apply(pattern.CutLine, ratio);

    public ImmutableArray<Point2> SewLine { get; } = Apply(pattern.SewLine, ratio);

    public ImmutableArray<Point2> MainFace { get; } = Apply(RoundShapes.NameRoom(pattern), ratio);

    /// <summary>Everything that is drawn, in order of painting. Notches cross the whole allowance.</summary>
    public IEnumerable<FigureLine> Lines =>
    [
        .. PatternBlock.Draw(pattern).Lines
            .Where(line => line.Layer != DrawingLayers.NotchSlit && line.Layer != DrawingLayers.NotchTick && line.Layer != DrawingLayers.Grain)
            .Select(line => new FigureLine(Style(line.Layer), Apply(line.Points, ratio), line.IsClosed)),
        .. Notches,
        .. Arrow(Apply(pattern.Grain.From), Apply(pattern.Grain.To)),
    ];

    /// <summary>Bars from the sew line to a little beyond the cut line.</summary>
    public IEnumerable<FigureLine> Notches => pattern.Notches.Select(notch =>
    {
        var (at, outer, inner) = (Apply(notch.OnSewLine), Apply(notch.Outer), Apply(notch.Inner));
        return new FigureLine("notch", [at, outer + (NotchBeyond * (outer - inner).Unit())], IsClosed: false);
    });

    public Point2 Apply(Point2 point) => ratio * point;

    /// <summary>
    /// The sew line of a run (of a curve its middle step, of a closed one a short piece at its lowest corner), the direction out of
    /// the piece there, and its allowance.
    /// </summary>
    public (Point2 From, Point2 To, Point2 Outward, double Allowance) Side(int run)
    {
        var edge = pattern.AllRuns[run];
        var steps = edge.IsClosed ? 1 : (edge.To - edge.From + SewLine.Length) % SewLine.Length;
        var middle = edge.From + ((steps - 1) / 2);
        var (from, to) = edge.IsClosed
            ? Lowest(RoundShapes.RingOf(pattern, run))
            : (SewLine[middle % SewLine.Length], SewLine[(middle + 1) % SewLine.Length]);
        return (from, to, -1 * (to - from).Unit().QuarterTurned(), ratio * edge.AllowanceMm);
    }

    /// <summary>Name of a layer as the style sheet spells it.</summary>
    internal static string Style(DrawingLayer layer) => layer.Name.ToLowerInvariant().Replace('_', '-');

    /// <summary>The grain line with its head.</summary>
    internal static IEnumerable<FigureLine> Arrow(Point2 from, Point2 to)
    {
        if (from == to)
        {
            yield break;
        }

        var back = to - (ArrowLength * (to - from).Unit());
        var aside = ArrowHalfWidth * (to - from).Unit().QuarterTurned();
        yield return new FigureLine("grain", [from, to], IsClosed: false);
        yield return new FigureLine("head", [back + aside, to, back - aside], IsClosed: true);
    }

    /// <summary>A short level piece of a closed edge at its lowest corner, for what is written there.</summary>
    private (Point2 From, Point2 To) Lowest(ImmutableArray<Point2> ring)
    {
        var (lowest, step) = (Apply(ring.MinBy(corner => corner.Y)), new Point2(Rings.SignedArea(ring) > 0 ? 1 : -1, 0));
        return (lowest - step, lowest + step);
    }

    private static ImmutableArray<Point2> Apply(ImmutableArray<Point2> points, double ratio) => ImmutableArray.CreateRange(points, point => ratio * point);
}
