using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Simple pictures of what to measure; the numbers in rings are those of the sheet. Nothing in them is to scale.</summary>
internal static class MeasuringPictures
{
    private const double TextHeight = 2.2;

    // Own choices of how the pictures look: base hubs of the picture's dome, its radius and height on paper, millimetres.
    private const int Hubs = 10;
    private const double Radius = 24;
    private const double Top = 30;

    /// <summary>Strut and hub, base from above, frame from the side.</summary>
    public static ImmutableArray<Figure> All { get; } = [Strut(), Dome()];

    /// <summary>Two tubes that meet at a bolt: their ends flattened and bent.</summary>
    private static Figure Strut()
    {
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        var texts = ImmutableArray.CreateBuilder<FigureText>();
        foreach (var (from, to) in new[] { (new Point2(12, 8), new Point2(90, 8)), (new Point2(90, 14), new Point2(12, 14)) })
        {
            lines.Add(Line("seam", from, to));
        }

        // Flattened ends go down to the bolts; the holes are where the bolts stand.
        lines.AddRange(
            Line("seam", new Point2(12, 8), new Point2(2, 4)), Line("seam", new Point2(12, 14), new Point2(2, 6)), Line("seam", new Point2(2, 4), new Point2(2, 6)),
            Line("seam", new Point2(90, 8), new Point2(100, 4)), Line("seam", new Point2(90, 14), new Point2(100, 6)), Line("seam", new Point2(100, 4), new Point2(100, 6)));
        Bolt(lines, 5);
        Bolt(lines, 97);
        Span(lines, texts, "1", "hole to hole", new Point2(5, 24), new Point2(97, 24), down: 16);
        Span(lines, texts, "2", "hole to bend", new Point2(97, -6), new Point2(90, -6), down: -14);
        Span(lines, texts, "7", "tube", new Point2(48, 8), new Point2(48, 14), down: 0);

        // A hub from the side: stack of ends on a bolt.
        lines.Add(new FigureLine("seam", [new Point2(108, 4), new Point2(138, 4), new Point2(138, 9), new Point2(108, 9)], IsClosed: true));
        lines.Add(new FigureLine("seam", [new Point2(119, 9), new Point2(127, 9), new Point2(127, 14), new Point2(119, 14)], IsClosed: true));
        lines.Add(new FigureLine("dot", Circle(new Point2(123, 6.5), 0.7), IsClosed: true));
        Span(lines, texts, "7", "to top of nut", new Point2(133, 6.5), new Point2(133, 14), down: 0);
        texts.Add(Written("hub centre", new Point2(112, -1), TextAnchor.Middle));
        lines.Add(Line("leader", new Point2(113, 1), new Point2(122.5, 6)));
        return new Figure("Struts and hubs, measures 1, 2 and 7", new Box2(new Point2(-4, -14), new Point2(182, 32)), lines.ToImmutable(), texts.ToImmutable());
    }

    /// <summary>On the left the base from above, on the right the frame from the side.</summary>
    private static Figure Dome()
    {
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        var texts = ImmutableArray.CreateBuilder<FigureText>();
        var middle = new Point2(38, 0);
        Point2 Hub(int i) => middle + (Radius * new Point2(Math.Cos(2 * Math.PI * i / Hubs), Math.Sin(2 * Math.PI * i / Hubs)));
        lines.Add(new FigureLine("seam", [.. Enumerable.Range(0, Hubs).Select(Hub)], IsClosed: true));
        lines.AddRange(Enumerable.Range(0, Hubs).Select(i => new FigureLine("dot", Circle(Hub(i), 0.8), IsClosed: true)));
        foreach (var i in new[] { 0, 2, 3 })
        {
            lines.Add(Line("usable", Hub(i), Hub(i + (Hubs / 2))));
        }

        lines.Add(new FigureLine("fold", [.. Enumerable.Range(0, Hubs).Select(i => middle + (1.12 * (Hub(i) - middle)))], IsClosed: true));
        Number(lines, texts, "3", middle + new Point2(-0.9 * Radius, 0.9 * Radius));
        texts.Add(Written("string", middle + new Point2((-0.9 * Radius) - 4, (0.9 * Radius) + 5), TextAnchor.Middle));
        Number(lines, texts, "4", middle);
        Number(lines, texts, "6", Hub(0) + new Point2(7, 3.5));
        texts.Add(Written("front: hub 1", Hub(0) + new Point2(4, -2.5), TextAnchor.Start));
        texts.Add(Written("count this way", Hub(1) + new Point2(5, 5), TextAnchor.Start));
        lines.Add(Line("leader", Hub(0) + new Point2(4.5, 6), Hub(1) + new Point2(5, 2)));
        lines.Add(new FigureLine("head", [Hub(1) + new Point2(5, 2), Hub(1) + new Point2(6.4, 0.6), Hub(1) + new Point2(5.4, -0.2)], IsClosed: true));
        texts.Add(Written("from above", middle + new Point2(0, -33), TextAnchor.Middle));
        Side(lines, texts, new Point2(124, -18));
        return new Figure("Base and height, measures 3 to 6 and 8", new Box2(new Point2(-4, -37), new Point2(182, 32)), lines.ToImmutable(), texts.ToImmutable());
    }

    private static void Side(ImmutableArray<FigureLine>.Builder lines, ImmutableArray<FigureText>.Builder texts, Point2 at)
    {
        Point2[] rim = [new(-28, 0), new(-29, 7), new(-24, 19), new(-12, 28), new(0, Top), new(12, 28), new(24, 19), new(29, 7), new(28, 0)];
        lines.Add(new FigureLine("seam", [.. rim.Select(point => at + point)], IsClosed: false));
        Point2[] low = [new(-28, 0), new(-14, 3), new(0, 0), new(14, 3), new(28, 0)];
        lines.Add(new FigureLine("seam", [.. low.Select(point => at + point)], IsClosed: false));
        lines.AddRange(rim.Concat(low).Select(point => new FigureLine("dot", Circle(at + point, 0.8), IsClosed: true)));
        lines.Add(Line("cut", at + new Point2(-38, -5), at + new Point2(38, -5)));
        texts.Add(Written("deck", at + new Point2(-38, -8), TextAnchor.Start));
        Span(lines, texts, "5", "top", at + new Point2(0, 0), at + new Point2(0, Top), down: 0);
        Span(lines, texts, "6", "", at + new Point2(14, -5), at + new Point2(14, 3), down: 0);
        Span(lines, texts, "6", "", at + new Point2(-28, -5), at + new Point2(-28, 0), down: 0);
        Span(lines, texts, "8", "edge", at + new Point2(28, -10), at + new Point2(38, -10), down: -8);
        texts.Add(Written("from the side", at + new Point2(0, -15), TextAnchor.Middle));
    }

    private static void Bolt(ImmutableArray<FigureLine>.Builder lines, double x) =>
        lines.Add(new FigureLine("cut", [new Point2(x - 1, 1), new Point2(x + 1, 1), new Point2(x + 1, 9), new Point2(x - 1, 9)], IsClosed: true));

    /// <summary>A measure from one point to another with its number in the middle; lines go down (or up) to what is measured.</summary>
    private static void Span(ImmutableArray<FigureLine>.Builder lines, ImmutableArray<FigureText>.Builder texts, string number, string name, Point2 from, Point2 to, double down)
    {
        var along = (to - from).Unit();
        lines.Add(Line("bar", from, to));
        foreach (var (end, way) in new[] { (from, along), (to, -1 * along) })
        {
            lines.Add(new FigureLine("head", [end, end + (1.8 * way) + (0.6 * way.QuarterTurned()), end + (1.8 * way) - (0.6 * way.QuarterTurned())], IsClosed: true));
            if (down != 0)
            {
                lines.Add(Line("leader", end + new Point2(0, down > 0 ? 1 : -1), end - new Point2(0, down)));
            }
        }

        var isUpright = Math.Abs(along.Y) > 0.5;
        var middle = Point2.Between(from, to, 0.5);
        var isShort = Point2.Distance(from, to) < 12;
        var place = isShort ? (isUpright ? middle + new Point2(4.5, 0) : to + new Point2(along.X > 0 ? 5 : -5, 0)) : middle;
        Number(lines, texts, number, place);
        if (name.Length > 0)
        {
            texts.Add(isUpright || (isShort && along.X > 0)
                ? Written(name, place + new Point2(4, 0), TextAnchor.Start)
                : isShort ? Written(name, place - new Point2(4, 0), TextAnchor.End) : Written(name, place + new Point2(0, 4.5), TextAnchor.Middle));
        }
    }

    private static void Number(ImmutableArray<FigureLine>.Builder lines, ImmutableArray<FigureText>.Builder texts, string number, Point2 at)
    {
        lines.Add(new FigureLine("face", Circle(at, 2.6), IsClosed: true));
        texts.Add(new FigureText("name", number, at, TextHeight, 0, TextAnchor.Middle));
    }

    private static FigureText Written(string text, Point2 at, TextAnchor anchor) => new("note", text, at, TextHeight, 0, anchor);

    private static FigureLine Line(string style, Point2 from, Point2 to) => new(style, [from, to], IsClosed: false);

    private static ImmutableArray<Point2> Circle(Point2 at, double radius) =>
        [.. Enumerable.Range(0, 24).Select(i => at + (radius * new Point2(Math.Cos(i * Math.PI / 12), Math.Sin(i * Math.PI / 12))))];
}
