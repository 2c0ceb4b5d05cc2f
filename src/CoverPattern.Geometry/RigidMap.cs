using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>A move of the plane that keeps all lengths: mirror first (y to -y), then turn, then shift.</summary>
/// <param name="Cosine">Cosine of the turn.</param>
/// <param name="Sine">Sine of the turn; positive turns counter-clockwise.</param>
/// <param name="Shift">Millimetres.</param>
/// <param name="Mirrored">Whether y changes sign before the turn.</param>
public readonly record struct RigidMap(double Cosine, double Sine, Point2 Shift, bool Mirrored)
{
    public static RigidMap Identity => new(1, 0, default, Mirrored: false);

    /// <summary>Makes a move from its parts; quarter turns are exact.</summary>
    /// <param name="degrees">Turn, degrees counter-clockwise.</param>
    /// <param name="shift">Millimetres.</param>
    /// <param name="mirrored">Whether y changes sign before the turn.</param>
    public static RigidMap FromDegrees(double degrees, Point2 shift, bool mirrored)
    {
        var (cosine, sine) = (((degrees % 360) + 360) % 360) switch
        {
            0 => (1.0, 0.0),
            90 => (0.0, 1.0),
            180 => (-1.0, 0.0),
            270 => (0.0, -1.0),
            var other => (Math.Cos(other * Math.PI / 180), Math.Sin(other * Math.PI / 180)),
        };
        return new RigidMap(cosine, sine, shift, mirrored);
    }

    /// <summary>The move that lays one segment on another of the same length, without mirroring.</summary>
    public static RigidMap Laying(Point2 from, Point2 to, Point2 onFrom, Point2 onTo)
    {
        var (step, onStep) = (to - from, onTo - onFrom);
        var scale = 1 / (step.Length * onStep.Length);
        var turn = new RigidMap(Point2.Dot(step, onStep) * scale, Point2.Cross(step, onStep) * scale, default, Mirrored: false);
        return turn with { Shift = onFrom - turn.Apply(from) };
    }

    public Point2 Apply(Point2 point)
    {
        var y = Mirrored ? -point.Y : point.Y;
        return new Point2((Cosine * point.X) - (Sine * y) + Shift.X, (Sine * point.X) + (Cosine * y) + Shift.Y);
    }

    public ImmutableArray<Point2> Apply(IEnumerable<Point2> points) => [.. points.Select(Apply)];

    /// <summary>The move that does another move first and then this one.</summary>
    public RigidMap After(RigidMap first)
    {
        var sine = Mirrored ? -first.Sine : first.Sine;
        return new RigidMap(
            (Cosine * first.Cosine) - (Sine * sine),
            (Sine * first.Cosine) + (Cosine * sine),
            Apply(first.Shift),
            Mirrored != first.Mirrored);
    }
}
