using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Reports;

/// <summary>Writes the base hubs round a view of the cover, each with its raise over the lowest base hub.</summary>
/// <param name="Lines">Lines from each hub to its name.</param>
/// <param name="Texts">The names.</param>
/// <param name="Lowest">How far down the view reaches with them, millimetres on paper.</param>
/// <param name="Highest">How far up.</param>
internal sealed record BaseHubs(ImmutableArray<FigureLine> Lines, ImmutableArray<FigureText> Texts, double Lowest, double Highest)
{
    private const double Gap = 4;
    private const double TextHeight = 1.7;

    // Least distance between two lines of writing, in heights of the capitals.
    private const double LineStep = 1.7;

    public static BaseHubs Draw(Result result, DomeDirection direction, double scale, Box2 outline)
    {
        ImmutableArray<Point3> places = [.. result.Frame.Base.Select(hub => result.Shell.Nodes[hub].Position)];
        return Draw(result.Frame, places, Ruler.Of(result.Job), direction, scale, outline);
    }

    /// <param name="frame">The frame.</param>
    /// <param name="places">Where the base hubs are drawn, in their order.</param>
    /// <param name="ruler">How raises are written.</param>
    /// <param name="direction">From where one looks.</param>
    /// <param name="scale">Millimetres on paper for one.</param>
    /// <param name="outline">What the names stand round.</param>
    public static BaseHubs Draw(Frame frame, ImmutableArray<Point3> places, Ruler ruler, DomeDirection direction, double scale, Box2 outline)
    {
        var hubs = frame.Base.Select(hub => (
            Text: frame.Hubs[hub].Label + " +" + ruler.Of(frame.Hubs[hub].Position.Z),
            frame.Hubs[hub].Position,
            At: scale * direction.Project(places[frame.Base.IndexOf(hub)]))).ToArray();
        return direction.IsPlan
            ? Round([.. hubs.Select(hub => (hub.Text, hub.At))], outline)
            : Below([.. hubs.Where(hub => Point3.Dot(hub.Position, direction.Toward) > -1e-6).Select(hub => (hub.Text, hub.At)).OrderBy(hub => hub.At.X)], outline);
    }

    /// <summary>Names that read outward round the outline of a plan.</summary>
    private static BaseHubs Round((string Text, Point2 At)[] hubs, Box2 outline)
    {
        var radius = (Math.Max(outline.Width, outline.Height) / 2) + Gap;
        var texts = hubs.Select(hub =>
        {
            var outward = hub.At.Unit();
            var turn = TextRoom.Readable(outward);
            var isOutward = (Math.Cos(turn * Math.PI / 180) * outward.X) + (Math.Sin(turn * Math.PI / 180) * outward.Y) > 0;
            return new FigureText("hub", hub.Text, radius * outward, TextHeight, turn, isOutward ? TextAnchor.Start : TextAnchor.End);
        }).ToArray();
        var lines = hubs.Select(hub => new FigureLine("leader", [hub.At, (radius - 1) * hub.At.Unit()], IsClosed: false));
        return Bounded([.. lines], texts, outline);
    }

    /// <summary>Names that read upward below an elevation.</summary>
    private static BaseHubs Below((string Text, Point2 At)[] hubs, Box2 outline)
    {
        var top = outline.Low.Y - Gap - 2;
        var places = Spreading.Apart([.. hubs.Select(hub => hub.At.X)], LineStep * TextHeight);
        var texts = hubs.Zip(places, (hub, x) => new FigureText("hub", hub.Text, new Point2(x, top), TextHeight, 90, TextAnchor.End)).ToArray();
        var lines = hubs.Zip(places, (hub, x) => new FigureLine(
            "leader", [hub.At, new Point2(hub.At.X, outline.Low.Y - 1), new Point2(x, top + 0.8)], IsClosed: false));
        return Bounded([.. lines], texts, outline);
    }

    private static BaseHubs Bounded(ImmutableArray<FigureLine> lines, IReadOnlyList<FigureText> texts, Box2 outline)
    {
        var heights = texts.SelectMany(text => text.Box()).Select(corner => corner.Y).Append(outline.Low.Y).Append(outline.High.Y).ToArray();
        return new BaseHubs(lines, [.. texts], heights.Min(), heights.Max());
    }
}
