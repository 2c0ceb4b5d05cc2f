using System;

namespace CoverPattern.Geometry;

/// <summary>A point, or the step between two points, of the plane.</summary>
/// <param name="X">Millimetres, any finite number.</param>
/// <param name="Y">Millimetres, any finite number.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Distance from the origin, millimetres.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public static Point2 operator +(Point2 left, Point2 right) => new(left.X + right.X, left.Y + right.Y);

    public static Point2 operator -(Point2 left, Point2 right) => new(left.X - right.X, left.Y - right.Y);

    public static Point2 operator *(double factor, Point2 point) => new(factor * point.X, factor * point.Y);

    public static double Dot(Point2 left, Point2 right) => (left.X * right.X) + (left.Y * right.Y);

    /// <summary>Twice the signed area of the triangle origin, left, right: positive when right lies counter-clockwise of left.</summary>
    public static double Cross(Point2 left, Point2 right) => (left.X * right.Y) - (left.Y * right.X);

    public static double Distance(Point2 left, Point2 right) => (right - left).Length;

    /// <summary>The point a fraction of the way from one point to another.</summary>
    /// <param name="from">The point at fraction 0.</param>
    /// <param name="to">The point at fraction 1.</param>
    /// <param name="fraction">Any ratio; 0.5 is the middle.</param>
    public static Point2 Between(Point2 from, Point2 to, double fraction) => from + (fraction * (to - from));

    /// <summary>The step of length 1 in the same direction.</summary>
    /// <returns>NaN coordinates for the zero step.</returns>
    public Point2 Unit() => (1 / Length) * this;

    /// <summary>The step turned a quarter counter-clockwise.</summary>
    public Point2 QuarterTurned() => new(-Y, X);
}
