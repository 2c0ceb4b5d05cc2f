using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Files.Reports;

/// <summary>Finds places for the names of hubs and strut classes in a view of a frame, off all bars and off each other.</summary>
/// <param name="Texts">The names that found a place.</param>
/// <param name="Leaders">Lines from hubs to names that stand away from them.</param>
/// <param name="Unlabelled">Labels of hubs that found none.</param>
internal sealed record FrameNames(ImmutableArray<FigureText> Texts, ImmutableArray<FigureLine> Leaders, ImmutableArray<string> Unlabelled)
{
    // Heights of capitals, millimetres on paper: like print at most, like a footnote at least.
    private const double HubText = 2.0;
    private const double ClassText = 2.0;
    private const double FairText = 1.7;
    private const double LeastText = 1.4;
    private const double HeightStep = 0.3;

    // Free paper between a dot's middle and its name, millimetres: a name nearer than the second needs no line to its hub.
    private const double Nearest = 0.9;
    private const double Near = 1.8;
    private const double Farther = 4;
    private const double Farthest = 8;
    private const double GapStep = 0.45;

    // A name stands this many times nearer to its own dot than to any other.
    private const double Nearer = 1.5;

    // Ways to go from a dot; two dozen, so that one of them halves the angle between any two of its bars.
    private const int Ways = 24;

    /// <summary>Names hubs, then classes.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="at">Where its hubs are drawn, millimetres on paper.</param>
    /// <param name="struts">Bars that are drawn.</param>
    /// <param name="hubs">Hubs to be named.</param>
    /// <param name="taken">What stands in the drawing already, bars and dots among it; takes the names as well.</param>
    internal static FrameNames Place(Frame frame, Point2[] at, Strut[] struts, int[] hubs, TakenPlaces taken)
    {
        var texts = ImmutableArray.CreateBuilder<FigureText>();
        var leaders = ImmutableArray.CreateBuilder<FigureLine>();
        var unlabelled = ImmutableArray.CreateBuilder<string>();
        foreach (var hub in hubs)
        {
            var room = new Box2(at[hub] - Reach(frame.Hubs[hub].Label), at[hub] + Reach(frame.Hubs[hub].Label));
            if (FreeText.First(Places(frame.Hubs[hub].Label, at[hub], [.. hubs.Where(other => other != hub).Select(other => at[other])], taken.Near(room)), taken) is not { } text)
            {
                unlabelled.Add(frame.Hubs[hub].Label);
                continue;
            }

            texts.Add(text);
            if (Leader(at[hub], text) is { } leader)
            {
                taken.TakeSteps(leader);
                leaders.Add(leader);
            }
        }

        texts.AddRange(struts.Select(strut => Class(strut, at, taken)).OfType<FigureText>());
        return new FrameNames(texts.ToImmutable(), leaders.ToImmutable(), unlabelled.ToImmutable());
    }

    /// <summary>Beside the bar; a bar too short for it, or among others, goes without: the order of erection tells it.</summary>
    private static FigureText? Class(Strut strut, Point2[] at, TakenPlaces taken)
    {
        var (from, to) = (at[strut.From], at[strut.To]);
        var height = Math.Min(ClassText, Point2.Distance(from, to) / 4);
        return height < LeastText ? null : FreeText.First(
            FreeText.Along(from, to, new FigureText("name", strut.Class, from, height, 0, TextAnchor.Middle))
                .Concat(FreeText.Along(from, to, new FigureText("name", strut.Class, from, LeastText, 0, TextAnchor.Middle))),
            taken);
    }

    private static Point2 Reach(string label) => new(Farthest + LetterWidth.Estimate(label, HubText) + 1, Farthest + HubText + 1);

    /// <summary>Free places round a dot: beside it before away from it, large letters before small ones.</summary>
    private static IEnumerable<FigureText> Places(string label, Point2 at, Point2[] others, TakenPlaces taken) =>
        from reach in new[] { (From: Nearest, To: Near, Least: FairText), (From: Near + GapStep, To: Farther, Least: FairText), (From: Nearest, To: Near, Least: LeastText), (From: Near + GapStep, To: Farthest, Least: LeastText) }
        from height in Steps(HubText, reach.Least, -HeightStep)
        from gap in Steps(reach.From, reach.To, GapStep)
        from way in Enumerable.Range(0, Ways)
        let text = Beside(label, at, gap, height, way)
        where taken.IsFree(text.Box()) && (Leader(at, text) is { } leader ? IsClear(leader, at, taken) : others.All(other => Gap(other, text) >= Nearer * gap))
        select text;

    /// <summary>From a point to the box of a level text.</summary>
    private static double Gap(Point2 point, FigureText text)
    {
        var box = Rings.Bounds(text.Box());
        return new Point2(Math.Max(Math.Abs(point.X - text.At.X) - (box.Width / 2), 0), Math.Max(Math.Abs(point.Y - text.At.Y) - (box.Height / 2), 0)).Length;
    }

    private static IEnumerable<double> Steps(double from, double to, double step)
    {
        for (var i = 0; step > 0 ? from + (i * step) <= to + 1e-9 : from + (i * step) >= to - 1e-9; i++)
        {
            yield return from + (i * step);
        }
    }

    /// <summary>A name whose box begins at a gap from the dot, along one of the ways.</summary>
    private static FigureText Beside(string label, Point2 at, double gap, double height, int way)
    {
        var turn = 2 * Math.PI * way / Ways;
        var outward = new Point2(Math.Cos(turn), Math.Sin(turn));
        var half = new Point2(LetterWidth.Estimate(label, height) / 2, height / 2);
        var inside = Math.Min(half.X / Math.Max(Math.Abs(outward.X), 1e-9), half.Y / Math.Max(Math.Abs(outward.Y), 1e-9));
        return new FigureText("hub", label, at + ((gap + inside) * outward), height, 0, TextAnchor.Middle);
    }

    /// <summary>From the dot straight towards the middle of the name, as far as its box; null when it stands beside its dot.</summary>
    private static FigureLine? Leader(Point2 at, FigureText text)
    {
        var box = Rings.Bounds(text.Box());
        var step = text.At - at;
        var inside = Math.Min(box.Width / 2 / Math.Max(Math.Abs(step.X), 1e-9), box.Height / 2 / Math.Max(Math.Abs(step.Y), 1e-9));
        var gap = step.Length * (1 - inside);
        return gap <= Near + 1e-6 ? null : new FigureLine("leader", [at, at + ((1 - inside) * 0.95 * step)], IsClosed: false);
    }

    /// <summary>Whether a line to a name meets nothing but what begins at its own dot.</summary>
    private static bool IsClear(FigureLine leader, Point2 at, TakenPlaces taken)
    {
        var outward = (leader.Points[1] - at).Unit();
        return taken.IsFree([at + (Nearest * outward), leader.Points[1]]);
    }
}
