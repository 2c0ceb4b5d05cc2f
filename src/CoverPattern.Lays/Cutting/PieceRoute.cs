using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>The way of the tool over one piece: strokes of one use after those of another, each use in the order, direction and from the corners that travel least.</summary>
/// <remarks>
/// Begins with the nearest stroke each time and then turns stretches round, moves up to three strokes, and begins closed strokes elsewhere, as
/// long as the whole way from the tool's place to the next piece grows shorter (2-opt and Or-opt, from memory).
/// </remarks>
internal sealed class PieceRoute
{
    private const int LongestMoved = 3;
    private const int MostPasses = 20;
    private const double Gain = 1e-6;

    private readonly Point2 at;
    private readonly Box2? next;
    private readonly List<Stroke> route = [];

    private PieceRoute(Point2 at, Box2? next) => (this.at, this.next) = (at, next);

    /// <summary>Routes a piece.</summary>
    /// <param name="strokes">Its strokes.</param>
    /// <param name="at">Where the tool stands.</param>
    /// <param name="next">Box of the piece that follows; null after the last.</param>
    /// <returns>The same strokes in order; closed ones begun at another corner, open ones turned round where that is shorter.</returns>
    internal static IEnumerable<Stroke> Find(ImmutableArray<Stroke> strokes, Point2 at, Box2? next)
    {
        var found = new PieceRoute(at, next);
        found.StartNearest(strokes);
        for (var pass = 0; pass < MostPasses && found.Shorten(); pass++)
        {
        }

        return found.route;
    }

    private void StartNearest(ImmutableArray<Stroke> strokes)
    {
        var here = at;
        foreach (var stage in strokes.GroupBy(stroke => stroke.Use).OrderBy(stage => stage.Key))
        {
            var left = stage.ToList();
            while (left.Count > 0)
            {
                var (stroke, corner) = left.SelectMany(stroke => Corners(stroke).Select(corner => (stroke, corner)))
                    .MinBy(choice => Point2.Distance(here, choice.stroke.Points[choice.corner]));
                route.Add(stroke.From(corner));
                left.Remove(stroke);
                here = route[^1].End;
            }
        }
    }

    private bool Shorten()
    {
        var isShorter = false;
        for (var first = 0; first < route.Count; first++)
        {
            isShorter |= TryBeginElsewhere(first);
            for (var last = first; last < route.Count && route[last].Use == route[first].Use; last++)
            {
                isShorter |= TryTurn(first, last);
                isShorter |= last - first < LongestMoved && TryMove(first, last);
            }
        }

        return isShorter;
    }

    /// <summary>A closed stroke may begin at any corner, an open one at either end.</summary>
    private static IEnumerable<int> Corners(Stroke stroke) =>
        stroke.IsClosed ? Enumerable.Range(0, stroke.Points.Length - 1) : [0, stroke.Points.Length - 1];

    private Point2 EndBefore(int i) => i > 0 ? route[i - 1].End : at;

    /// <summary>Travel from a point to the stroke after the one at an index; to the next piece after the last.</summary>
    private double ToAfter(Point2 from, int i) => i + 1 < route.Count ? Point2.Distance(from, route[i + 1].Start) : ToNext(from);

    private double ToNext(Point2 from) => next is { } box
        ? Point2.Distance(from, new Point2(Math.Clamp(from.X, box.Low.X, box.High.X), Math.Clamp(from.Y, box.Low.Y, box.High.Y)))
        : 0;

    private bool TryBeginElsewhere(int i)
    {
        var stroke = route[i];
        if (!stroke.IsClosed)
        {
            return false;
        }

        var before = EndBefore(i);
        double Way(Point2 point) => Point2.Distance(before, point) + ToAfter(point, i);
        var best = Corners(stroke).MinBy(corner => Way(stroke.Points[corner]));
        if (Way(stroke.Points[best]) > Way(stroke.Start) - Gain)
        {
            return false;
        }

        route[i] = stroke.From(best);
        return true;
    }

    private bool TryTurn(int first, int last)
    {
        var before = EndBefore(first);
        var gain = Point2.Distance(before, route[first].Start) + ToAfter(route[last].End, last)
            - Point2.Distance(before, route[last].End) - ToAfter(route[first].Start, last);
        if (gain <= Gain)
        {
            return false;
        }

        route.Reverse(first, last - first + 1);
        for (var i = first; i <= last; i++)
        {
            route[i] = Turned(route[i]);
        }

        return true;
    }

    /// <summary>An open stroke runs from its other end; a closed one keeps its corner.</summary>
    private static Stroke Turned(Stroke stroke) => stroke.IsClosed ? stroke : stroke.From(stroke.Points.Length - 1);

    /// <summary>Takes a stretch out and puts it, either way round, where the way among the strokes of its use grows least.</summary>
    private bool TryMove(int first, int last)
    {
        var (start, end, before) = (route[first].Start, route[last].End, EndBefore(first));
        var saved = Point2.Distance(before, start) + ToAfter(end, last) - ToAfter(before, last);
        var best = (Gain, To: -1, IsTurned: false);
        for (var to = 0; to <= route.Count; to++)
        {
            if ((to >= first && to <= last + 1) || !IsOfUse(to, route[first].Use))
            {
                continue;
            }

            var from = EndBefore(to);
            var without = saved + ToAfter(from, to - 1);
            best = Better(best, without - Point2.Distance(from, start) - ToAfter(end, to - 1), to, isTurned: false);
            best = Better(best, without - Point2.Distance(from, end) - ToAfter(start, to - 1), to, isTurned: true);
        }

        if (best.To < 0)
        {
            return false;
        }

        Move(first, last - first + 1, best.To, best.IsTurned);
        return true;
    }

    private static (double Gain, int To, bool IsTurned) Better((double Gain, int To, bool IsTurned) best, double gain, int to, bool isTurned) =>
        gain > best.Gain ? (gain, to, isTurned) : best;

    /// <summary>Whether a place before an index lies among or beside strokes of a use.</summary>
    private bool IsOfUse(int to, StrokeUse use) => (to < route.Count && route[to].Use == use) || (to > 0 && route[to - 1].Use == use);

    private void Move(int first, int count, int to, bool isTurned)
    {
        var stretch = route.GetRange(first, count);
        if (isTurned)
        {
            stretch.Reverse();
            stretch = [.. stretch.Select(Turned)];
        }

        route.RemoveRange(first, count);
        route.InsertRange(to > first ? to - count : to, stretch);
    }
}
