using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>The largest upright box that a person or thing can pass between the struts round one facet.</summary>
/// <param name="WidthMm">Width, square to up, millimetres.</param>
/// <param name="HeightMm">Height along the facet, millimetres.</param>
/// <remarks>
/// The facet less the tubes' radius and what openings keep clear of them along every side, and less a straight cut before each hub, tangent to the
/// circle that its radius and clearance make: so the box is never too large. In that convex shape an upright box touches two levels; its
/// width is what both have in common. Of a triangle of base b and height h on its base it is b/2 x h/2 [own derivation].
/// </remarks>
public readonly record struct ClearBox(double WidthMm, double HeightMm)
{
    // Levels tried; the best is then looked for between its neighbours, so that the box is found to a fraction of a millimetre.
    private const int Levels = 120;
    private const int Rounds = 3;

    /// <summary>Area of the box, square millimetres.</summary>
    public double Area => WidthMm * HeightMm;

    /// <summary>The largest box in a facet of a frame, between the axes of its struts.</summary>
    /// <param name="job">Tube, hubs and clearances are read.</param>
    /// <param name="frame">The frame itself: the cover lies outside and is larger.</param>
    /// <param name="facet">Index of a facet.</param>
    public static ClearBox Of(Job job, Frame frame, int facet) => Largest(RoomIn(job, frame, facet));

    /// <summary>How high a box of a width can be there; 0 where none of that width fits.</summary>
    /// <param name="job">See <see cref="Of"/>.</param>
    /// <param name="frame">See <see cref="Of"/>.</param>
    /// <param name="facet">See <see cref="Of"/>.</param>
    /// <param name="width">Millimetres.</param>
    public static double HighestOf(Job job, Frame frame, int facet, double width)
    {
        var room = RoomIn(job, frame, facet);
        return room.IsEmpty ? 0 : Searched(room, (from, to) => Common(room, from, to) >= width ? to - from : 0).Value;
    }

    /// <summary>What is left of a facet between tubes and hubs, turned upright.</summary>
    private static ImmutableArray<Point2> RoomIn(Job job, Frame frame, int facet)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);
        var upright = Upright([.. frame.Facets[facet].Hubs.Select(hub => frame.Hubs[hub].Position)]);
        var (side, hub) = (job.StandOff.TubeRadius.Millimetres + job.Clearances.Tube.Millimetres, job.StandOff.HubRadius.Millimetres + job.Clearances.Hub.Millimetres);
        var count = upright.Length;
        var room = upright;
        for (var i = 0; i < count; i++)
        {
            var (before, corner, after) = (upright[(i + count - 1) % count], upright[i], upright[(i + 1) % count]);
            var along = (after - corner).Unit();
            room = ConvexOutlines.LeftOf(room, corner + (side * along.QuarterTurned()), along);
            var inward = (along + (before - corner).Unit()).Unit();
            room = ConvexOutlines.LeftOf(room, corner + (hub * inward), -1 * inward.QuarterTurned());
        }

        return room;
    }

    /// <summary>A plane facet seen from outside, up square to its first edge and away from it, down where it hangs below it.</summary>
    private static ImmutableArray<Point2> Upright(ImmutableArray<Point3> hubs)
    {
        var along = (hubs[1] - hubs[0]).Unit();
        var across = Point3.Cross(Point3.Cross(along, hubs[^1] - hubs[0]).Unit(), along);
        var turn = hubs.Average(hub => hub.Z) < (hubs[0].Z + hubs[1].Z) / 2 ? -1 : 1;
        return [.. hubs.Select(hub => turn * new Point2(Point3.Dot(hub - hubs[0], along), Point3.Dot(hub - hubs[0], across)))];
    }

    private static ClearBox Largest(ImmutableArray<Point2> room)
    {
        if (room.IsEmpty)
        {
            return default;
        }

        var (_, from, to) = Searched(room, (low, high) => Common(room, low, high) is var width and > 0 ? width * (high - low) : 0);
        return new ClearBox(Math.Max(0, Common(room, from, to)), to - from);
    }

    /// <summary>The pair of levels with the greatest value: over a grid of levels, then over finer ones round the best.</summary>
    private static (double Value, double From, double To) Searched(ImmutableArray<Point2> room, Func<double, double, double> value)
    {
        var (low, high) = (room.Min(corner => corner.Y), room.Max(corner => corner.Y));
        var best = (Value: 0.0, From: low, To: low);
        var (fromLow, fromHigh, toLow, toHigh) = (low, high, low, high);
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var from in Steps(fromLow, fromHigh))
            {
                foreach (var to in Steps(toLow, toHigh).Where(to => to > from))
                {
                    if (value(from, to) is var found && found > best.Value)
                    {
                        best = (found, from, to);
                    }
                }
            }

            var (fromStep, toStep) = ((fromHigh - fromLow) / Levels, (toHigh - toLow) / Levels);
            (fromLow, fromHigh, toLow, toHigh) = (Math.Max(low, best.From - fromStep), Math.Min(high, best.From + fromStep), Math.Max(low, best.To - toStep), Math.Min(high, best.To + toStep));
        }

        return best;
    }

    private static IEnumerable<double> Steps(double low, double high) => Enumerable.Range(0, Levels + 1).Select(i => low + ((high - low) * i / Levels));

    /// <summary>Width that two levels of a convex ring have in common; negative where they have none.</summary>
    private static double Common(ImmutableArray<Point2> room, double from, double to)
    {
        var (here, there) = (Across(room, from), Across(room, to));
        return Math.Min(here.High, there.High) - Math.Max(here.Low, there.Low);
    }

    private static (double Low, double High) Across(ImmutableArray<Point2> room, double level)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < room.Length; i++)
        {
            var (here, there) = (room[i], room[(i + 1) % room.Length]);
            if (Math.Min(here.Y, there.Y) > level || Math.Max(here.Y, there.Y) < level)
            {
                continue;
            }

            var (left, right) = here.Y == there.Y ? (here.X, there.X) : At(here, there, level);
            (low, high) = (Math.Min(low, Math.Min(left, right)), Math.Max(high, Math.Max(left, right)));
        }

        return (low, high);
    }

    private static (double Left, double Right) At(Point2 here, Point2 there, double level)
    {
        var x = Point2.Between(here, there, (level - here.Y) / (there.Y - here.Y)).X;
        return (x, x);
    }
}
