using System;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Drawings;

/// <summary>A circle of a piece in which a label may stand.</summary>
/// <param name="Centre">Millimetres.</param>
/// <param name="Radius">Millimetres.</param>
public readonly record struct FreeCircle(Point2 Centre, double Radius)
{
    /// <summary>The largest circle inside this one that a segment does not enter, on the roomier side of the segment's line.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    public FreeCircle ClearOf(Point2 from, Point2 to)
    {
        if (from == to || Segments.Distance(from, to, Centre) >= Radius)
        {
            return this;
        }

        var aside = (to - from).Unit().QuarterTurned();
        var height = Point2.Dot(Centre - from, aside);
        var outward = height < 0 ? -1 : 1;
        var free = (Radius + Math.Abs(height)) / 2;
        return new FreeCircle(Centre + (outward * (Radius - free) * aside), free);
    }

    /// <summary>A circle inside this one that a short mark does not enter: the smaller circle about the same centre, or one beside the mark.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    public FreeCircle ClearOfMark(Point2 from, Point2 to)
    {
        var (within, beside) = (this with { Radius = Math.Min(Radius, Segments.Distance(from, to, Centre)) }, ClearOf(from, to));
        return within.Radius >= beside.Radius ? within : beside;
    }
}
