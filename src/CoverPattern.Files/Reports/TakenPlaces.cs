using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Places of a figure that writing must keep off: convex outlines and straight lines.</summary>
internal sealed class TakenPlaces
{
    // Millimetres on paper, some letters wide; a place that reaches over more squares than this is looked at each time. Own choices.
    private const double Square = 8;
    private const int MostSquares = 400;

    private readonly List<TakenPlace> places = [];

    // A drawing with many windows has ten thousands of steps, and names are tried in thousands of spots: only the squares that a spot lies in are looked at.
    private readonly Dictionary<(int X, int Y), List<TakenPlace>> squares = [];
    private readonly List<TakenPlace> wide = [];

    /// <summary>Takes a place.</summary>
    /// <param name="corners">Corners of a convex outline in order, or the two ends of a line.</param>
    public void Take(IReadOnlyList<Point2> corners) => Add(new TakenPlace(corners, Rings.Bounds(corners)));

    /// <summary>Takes every edge of a ring, not what lies inside.</summary>
    public void TakeEdges(IReadOnlyList<Point2> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            Take([ring[i], ring[(i + 1) % ring.Count]]);
        }
    }

    /// <summary>Takes every step of a line.</summary>
    public void TakeSteps(FigureLine line)
    {
        for (var i = 0; i < (line.IsClosed ? line.Points.Length : line.Points.Length - 1); i++)
        {
            Take([line.Points[i], line.Points[(i + 1) % line.Points.Length]]);
        }
    }

    /// <summary>Takes every step of lines.</summary>
    public void TakeLines(IEnumerable<FigureLine> lines)
    {
        foreach (var line in lines)
        {
            TakeSteps(line);
        }
    }

    /// <summary>The same places, to be added to.</summary>
    public TakenPlaces Copy()
    {
        var copy = new TakenPlaces();
        places.ForEach(copy.Add);
        return copy;
    }

    /// <summary>Whether nothing is taken.</summary>
    public bool IsEmpty => places.Count == 0;

    /// <summary>The places that reach into a box: where many are asked about one spot, the others need not be looked at each time.</summary>
    public TakenPlaces Near(Box2 box)
    {
        var near = new TakenPlaces();
        foreach (var place in places.Where(place => !place.Box.IsApartFrom(box)))
        {
            near.Add(place);
        }

        return near;
    }

    /// <summary>Whether nothing taken reaches into a convex outline.</summary>
    public bool IsFree(IReadOnlyList<Point2> corners)
    {
        var box = Rings.Bounds(corners);
        bool IsFreeOf(TakenPlace place) => place.Box.IsApartFrom(box) || ConvexOutlines.AreApart(place.Corners, corners);
        return SquaresOf(box) is { } own
            ? wide.TrueForAll(IsFreeOf) && own.All(square => !squares.TryGetValue(square, out var some) || some.TrueForAll(IsFreeOf))
            : places.TrueForAll(IsFreeOf);
    }

    private void Add(TakenPlace place)
    {
        places.Add(place);
        if (SquaresOf(place.Box) is not { } own)
        {
            wide.Add(place);
            return;
        }

        foreach (var square in own)
        {
            if (!squares.TryGetValue(square, out var some))
            {
                squares.Add(square, some = []);
            }

            some.Add(place);
        }
    }

    /// <summary>The squares that a box reaches into; null when they are too many.</summary>
    private static IEnumerable<(int X, int Y)>? SquaresOf(Box2 box)
    {
        var (left, right) = (Math.Floor(box.Low.X / Square), Math.Floor(box.High.X / Square));
        var (low, high) = (Math.Floor(box.Low.Y / Square), Math.Floor(box.High.Y / Square));
        return (right - left + 1) * (high - low + 1) <= MostSquares
            ? Enumerable.Range((int)left, (int)(right - left) + 1).SelectMany(_ => Enumerable.Range((int)low, (int)(high - low) + 1), (x, y) => (x, y))
            : null;
    }

    private sealed record TakenPlace(IReadOnlyList<Point2> Corners, Box2 Box);
}
