using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>Places of a figure that writing must keep off: convex outlines and straight lines.</summary>
internal sealed class TakenPlaces
{
    // Most places are far off: their boxes tell so at once.
    private readonly List<(IReadOnlyList<Point2> Corners, Box2 Box)> places = [];

    /// <summary>Takes a place.</summary>
    /// <param name="corners">Corners of a convex outline in order, or the two ends of a line.</param>
    public void Take(IReadOnlyList<Point2> corners) => places.Add((corners, Rings.Bounds(corners)));

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
        copy.places.AddRange(places);
        return copy;
    }

    /// <summary>Whether nothing is taken.</summary>
    public bool IsEmpty => places.Count == 0;

    /// <summary>The places that reach into a box: where many are asked about one spot, the others need not be looked at each time.</summary>
    public TakenPlaces Near(Box2 box)
    {
        var near = new TakenPlaces();
        near.places.AddRange(places.Where(place => !place.Box.IsApartFrom(box)));
        return near;
    }

    /// <summary>Whether nothing taken reaches into a convex outline.</summary>
    public bool IsFree(IReadOnlyList<Point2> corners)
    {
        var box = Rings.Bounds(corners);
        return places.TrueForAll(place => place.Box.IsApartFrom(box) || ConvexOutlines.AreApart(place.Corners, corners));
    }
}
