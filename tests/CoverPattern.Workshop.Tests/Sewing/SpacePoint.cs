using System;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A point or step in space, millimetres; the tests' own, so that the truth owes nothing to the product.</summary>
internal readonly record struct SpacePoint(double X, double Y, double Z)
{
    internal double Length => Math.Sqrt(Dot(this));

    internal SpacePoint Unit => (1 / Length) * this;

    public static SpacePoint operator +(SpacePoint left, SpacePoint right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    public static SpacePoint operator -(SpacePoint left, SpacePoint right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    public static SpacePoint operator *(double factor, SpacePoint point) => new(factor * point.X, factor * point.Y, factor * point.Z);

    internal double Dot(SpacePoint other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    internal SpacePoint Cross(SpacePoint other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    internal double DistanceTo(SpacePoint other) => (this - other).Length;
}
