using System;
using System.Collections.Immutable;

namespace CoverPattern.Geometry;

/// <summary>Keeps what of a line lies in an upright rectangle.</summary>
/// <remarks>Each straight step is cut against the four sides by its parameter [Liang and Barsky 1984], from memory.</remarks>
public static class BoxClip
{
    /// <summary>The parts of a line inside a rectangle, in order; a part that only touches it from outside in a point is left out.</summary>
    /// <param name="box">The rectangle, its edge included.</param>
    /// <param name="line">At least two points.</param>
    public static ImmutableArray<ImmutableArray<Point2>> Within(Box2 box, ImmutableArray<Point2> line)
    {
        var parts = ImmutableArray.CreateBuilder<ImmutableArray<Point2>>();
        var part = ImmutableArray.CreateBuilder<Point2>();
        for (var i = 1; i < line.Length; i++)
        {
            if (Within(box, line[i - 1], line[i]) is not { } step)
            {
                continue;
            }

            if (part.Count > 0 && part[^1] != step.From)
            {
                parts.Add(part.DrainToImmutable());
            }

            if (part.Count == 0)
            {
                part.Add(step.From);
            }

            part.Add(step.To);
        }

        if (part.Count > 0)
        {
            parts.Add(part.DrainToImmutable());
        }

        return parts.ToImmutable();
    }

    /// <summary>The stretch of a straight step inside a rectangle; null when it lies outside or has no length there.</summary>
    public static (Point2 From, Point2 To)? Within(Box2 box, Point2 from, Point2 to)
    {
        var (enter, leave) = (0.0, 1.0);
        var step = to - from;
        var hits = Narrow(-step.X, from.X - box.Low.X, ref enter, ref leave)
            && Narrow(step.X, box.High.X - from.X, ref enter, ref leave)
            && Narrow(-step.Y, from.Y - box.Low.Y, ref enter, ref leave)
            && Narrow(step.Y, box.High.Y - from.Y, ref enter, ref leave);
        return hits && enter < leave ? (At(enter), At(leave)) : null;

        // Ends that lie inside are kept to the last digit.
        Point2 At(double share) => share == 0 ? from : share == 1 ? to : Point2.Between(from, to, share);
    }

    /// <summary>Narrows the parameters to those with speed * t &lt;= room; false when none is left.</summary>
    private static bool Narrow(double speed, double room, ref double enter, ref double leave)
    {
        if (speed == 0)
        {
            return room >= 0;
        }

        if (speed < 0)
        {
            enter = Math.Max(enter, room / speed);
        }
        else
        {
            leave = Math.Min(leave, room / speed);
        }

        return enter < leave;
    }
}
