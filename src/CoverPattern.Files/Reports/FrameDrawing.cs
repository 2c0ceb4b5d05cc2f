using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
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
        var own = FrameNames.Place(frame, at, struts, [.. hubs.Where(hub => hub >= frame.Base.Length)], Taken(at, struts, hubs, names));
        var tops = own.Texts.SelectMany(text => text.Box()).Select(corner => corner.Y).Append(names.Highest).Max();
        var bar = ScaleBar.Draw(scale, new Point2(outline.Low.X, names.Lowest - BarRoom));
        return new DomeView(
            new Figure(
                direction.Name,
                new Box2(new Point2(outline.Centre.X - (Room / 2) - Margin, names.Lowest - BarRoom - 4), new Point2(outline.Centre.X + (Room / 2) + Margin, tops + 3)),
                [
                    .. names.Lines, .. own.Leaders,
                    .. struts.Select(strut => new FigureLine("seam", [at[strut.From], at[strut.To]], IsClosed: false)),
                    .. hubs.Select(hub => new FigureLine("dot", Spot(at[hub]), IsClosed: true)), .. bar.Lines,
                ],
                [.. own.Texts, .. names.Texts, .. bar.Texts]),
            [.. hubs.Select(hub => frame.Hubs[hub].Label)],
            own.Unlabelled,
            scale);
    }

    /// <summary>Bars, dots and what is written round the base: names keep off them.</summary>
    private static TakenPlaces Taken(Point2[] at, Strut[] struts, int[] hubs, BaseHubs names)
    {
        var taken = new TakenPlaces();
        foreach (var strut in struts)
        {
            taken.Take([at[strut.From], at[strut.To]]);
        }

        foreach (var hub in hubs)
        {
            taken.Take(Spot(at[hub]));
        }

        foreach (var text in names.Texts)
        {
            taken.Take(text.Box());
        }

        foreach (var line in names.Lines)
        {
            taken.TakeSteps(line);
        }

        return taken;
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
}
