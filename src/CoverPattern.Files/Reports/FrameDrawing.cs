using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Reports;

/// <summary>Draws the bars of a frame with the names of hubs and strut classes.</summary>
internal static class FrameDrawing
{
    // Own choices, millimetres on paper: an A4 page less its margins and the names round the base.
    private const double Room = 140;
    private const double Height = 140;
    private const double Margin = 22;
    private const double BarRoom = 9;

    // Heights of capitals, millimetres on paper: like print at most, like a footnote at least.
    private const double HubText = 2.0;
    private const double ClassText = 2.0;
    private const double LeastText = 1.4;

    // A facet seen under less than this (sine of the angle between its plane and the view) is an edge.
    private const double EdgeOn = 1e-3;

    private const double Dot = 0.5;

    private static readonly double[] Scales = [5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 75, 100, 150, 200, 250, 300, 400, 500, 1000, 2000, 5000];

    /// <summary>A view of the bars that face the onlooker.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="direction">From where one looks.</param>
    /// <param name="ruler">How raises are written.</param>
    /// <returns>Seen and without room for their names: hubs.</returns>
    internal static DomeView Draw(Frame frame, DomeDirection direction, Ruler ruler)
    {
        var scale = Scale(frame);
        var at = frame.Hubs.Select(hub => (1 / scale) * direction.Project(hub.Position)).ToArray();
        var seen = Seen(frame, direction);
        var struts = frame.Struts.Where(strut => seen.Contains((strut.From, strut.To))).ToArray();
        var hubs = struts.SelectMany(strut => new[] { strut.From, strut.To }).Distinct().Order().ToArray();
        var outline = Rings.Bounds(at);
        var names = BaseHubs.Draw(frame, [.. frame.Base.Select(hub => frame.Hubs[hub].Position)], ruler, direction, 1 / scale, outline);
        var (texts, unlabelled) = Names(frame, at, struts, [.. hubs.Where(hub => hub >= frame.Base.Length)]);
        var bar = ScaleBar.Draw(scale, new Point2(outline.Low.X, names.Lowest - BarRoom));
        return new DomeView(
            new Figure(
                direction.Name,
                new Box2(new Point2(outline.Centre.X - (Room / 2) - Margin, names.Lowest - BarRoom - 4), new Point2(outline.Centre.X + (Room / 2) + Margin, names.Highest + 6)),
                [
                    .. names.Lines,
                    .. struts.Select(strut => new FigureLine("seam", [at[strut.From], at[strut.To]], IsClosed: false)),
                    .. hubs.Select(hub => new FigureLine("dot", Spot(at[hub]), IsClosed: true)), .. bar.Lines,
                ],
                [.. texts, .. names.Texts, .. bar.Texts]),
            [.. hubs.Select(hub => frame.Hubs[hub].Label)],
            unlabelled,
            scale);
    }

    private static double Scale(Frame frame)
    {
        var box = frame.Hubs.Select(hub => hub.Position).ToArray();
        var width = Math.Max(box.Max(p => p.X) - box.Min(p => p.X), box.Max(p => p.Y) - box.Min(p => p.Y));
        var height = box.Max(p => p.Z) - box.Min(p => p.Z);
        return Scales.First(scale => (width <= Room * scale && height <= Height * scale) || scale == Scales[^1]);
    }

    /// <summary>Edges of the facets that face the onlooker, the lower hub first.</summary>
    private static HashSet<(int, int)> Seen(Frame frame, DomeDirection direction) =>
    [
        .. frame.Facets.Where(facet =>
        {
            var corners = facet.Hubs.Select(hub => frame.Hubs[hub].Position).ToArray();
            return Point3.Dot(Point3.Cross(corners[1] - corners[0], corners[2] - corners[0]).Unit(), direction.Toward) > EdgeOn;
        }).SelectMany(facet => facet.Hubs.Select((hub, i) => (hub, Next: facet.Hubs[(i + 1) % facet.Hubs.Length]))).Select(pair => (Math.Min(pair.hub, pair.Next), Math.Max(pair.hub, pair.Next))),
    ];

    private static ImmutableArray<Point2> Spot(Point2 at) =>
        [.. Enumerable.Range(0, 8).Select(i => at + (Dot * new Point2(Math.Cos(i * Math.PI / 4), Math.Sin(i * Math.PI / 4))))];

    /// <summary>Classes on the middle of their struts; hubs beside their dots, off lines where there is room, else over a line.</summary>
    private static (ImmutableArray<FigureText> Texts, ImmutableArray<string> Unlabelled) Names(Frame frame, Point2[] at, Strut[] struts, int[] hubs)
    {
        var (texts, lines) = (new TakenPlaces(), new TakenPlaces());
        var placed = ImmutableArray.CreateBuilder<FigureText>();
        foreach (var hub in hubs)
        {
            texts.Take(Spot(at[hub]));
        }

        foreach (var strut in struts)
        {
            var (from, to) = (at[strut.From], at[strut.To]);
            lines.Take([from, to]);
            var height = Math.Min(ClassText, Point2.Distance(from, to) / 4);
            var text = new FigureText("name", strut.Class, Point2.Between(from, to, 0.5), height, 0, TextAnchor.Middle);
            if (height >= LeastText && texts.IsFree(text.Box()))
            {
                texts.Take(text.Box());
                placed.Add(text);
            }
        }

        var unlabelled = ImmutableArray.CreateBuilder<string>();
        foreach (var hub in hubs)
        {
            FigureText[] tries = [.. Places(frame.Hubs[hub].Label, at[hub]).Where(text => texts.IsFree(text.Box()))];
            if ((tries.FirstOrDefault(text => lines.IsFree(text.Box())) ?? tries.FirstOrDefault()) is { } text)
            {
                texts.Take(text.Box());
                placed.Add(text);
            }
            else
            {
                unlabelled.Add(frame.Hubs[hub].Label);
            }
        }

        return (placed.ToImmutable(), unlabelled.ToImmutable());
    }

    /// <summary>Places round a dot, the larger letters first, near ones before far ones.</summary>
    private static IEnumerable<FigureText> Places(string label, Point2 at)
    {
        for (var height = HubText; height >= LeastText; height -= 0.2)
        {
            for (var away = 1; away <= 2; away++)
            {
                for (var turn = 0; turn < 8; turn++)
                {
                    var way = new Point2(Math.Cos((turn + 0.5) * Math.PI / 4), Math.Sin((turn + 0.5) * Math.PI / 4));
                    var half = LetterWidth.Estimate(label, height) / 2;
                    var step = new Point2(way.X * (half + (Dot * away)), way.Y * ((height / 2) + (Dot * (away + 1))));
                    yield return new FigureText("hub", label, at + step, height, 0, TextAnchor.Middle);
                }
            }
        }
    }
}
