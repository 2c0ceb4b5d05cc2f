using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Frames;

/// <summary>Three measures across the floor that a tape can take: from a base hub straight to the one farthest from it.</summary>
/// <remarks>A base of fifteen hubs has none opposite another, and one that is not round has no diameter: so hubs are named.</remarks>
public static class FloorMeasures
{
    // Hubs whose distances differ by less are equally far, millimetres.
    private const double Alike = 0.01;

    private const int Count = 3;

    /// <summary>From a hub at the front, and from two farther round; of equally far hubs the first counter-clockwise. Fewer where they would be the same.</summary>
    /// <param name="frame">The frame.</param>
    public static IEnumerable<(Hub From, Hub To, double Mm)> Across(Frame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return AcrossFrom(frame);
    }

    private static IEnumerable<(Hub From, Hub To, double Mm)> AcrossFrom(Frame frame)
    {
        var ground = frame.Base.Select(hub => frame.Hubs[hub]).ToArray();
        var taken = new HashSet<(Hub, Hub)>();
        for (var i = 0; i < Count; i++)
        {
            var start = i * ground.Length / Count;
            var from = ground[start];
            var others = Enumerable.Range(1, ground.Length - 1).Select(step => ground[(start + step) % ground.Length]).ToArray();
            var most = others.Max(hub => Point3.Distance(from.Position, hub.Position));
            var to = others.First(hub => Point3.Distance(from.Position, hub.Position) >= most - Alike);
            if (taken.Add((from, to)) && !taken.Contains((to, from)))
            {
                yield return (from, to, Point3.Distance(from.Position, to.Position));
            }
        }
    }
}
