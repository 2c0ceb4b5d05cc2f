using System;

namespace CoverPattern.Geometry;

/// <summary>A point, or the step between two points, of space; z is up.</summary>
/// <param name="X">Millimetres, any finite number.</param>
/// <param name="Y">Millimetres, any finite number.</param>
/// <param name="Z">Millimetres, any finite number.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Distance from the origin, millimetres.</summary>
    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>The point seen from above.</summary>
    public Point2 Plan => new(X, Y);

    public static Point3 operator +(Point3 left, Point3 right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    public static Point3 operator -(Point3 left, Point3 right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    public static Point3 operator *(double factor, Point3 point) => new(factor * point.X, factor * point.Y, factor * point.Z);

    public static double Dot(Point3 left, Point3 right) => (left.X * right.X) + (left.Y * right.Y) + (left.Z * right.Z);

    public static Point3 Cross(Point3 left, Point3 right) => new(
        (left.Y * right.Z) - (left.Z * right.Y),
        (left.Z * right.X) - (left.X * right.Z),
        (left.X * right.Y) - (left.Y * right.X));

    public static double Distance(Point3 left, Point3 right) => (right - left).Length;

    /// <summary>The point a fraction of the way from one point to another.</summary>
    /// <param name="from">The point at fraction 0.</param>
    /// <param name="to">The point at fraction 1.</param>
    /// <param name="fraction">Any ratio; 0.5 is the middle.</param>
    public static Point3 Between(Point3 from, Point3 to, double fraction) => from + (fraction * (to - from));

    /// <summary>The step of length 1 in the same direction.</summary>
    /// <returns>NaN coordinates for the zero step.</returns>
    public Point3 Unit() => (1 / Length) * this;
}
