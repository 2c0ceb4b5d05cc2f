using System;
using System.Collections.Immutable;
using System.Linq;
using CsCheck;

namespace CoverPattern.Geometry.Tests;

public class TubeUnrollingTests
{
    /// <summary>The foot of a cylinder on a plane tilted about the axis's foot: lowest in the direction of +x, corners at every twelfth.</summary>
    private static ImmutableArray<Point3> Foot(double radius, double tiltDegrees) =>
        [.. Circles.Slanting(radius, 0.26).Select(point => new Point3(point.X, point.Y, -point.X * Math.Tan(tiltDegrees * Math.PI / 180)))];

    // Own calculation, r tan t (1 + cos(30 k degrees)) from the highest point; cutback published as 22.50 rounded: [pipe bends].
    [Theory]
    [InlineData(100, 30, new[] { 115.470, 107.735, 86.603, 57.735, 28.868, 7.735, 0 })]
    [InlineData(100, 45, new[] { 200, 186.603, 150, 100, 50, 13.397, 0 })]
    [InlineData(76.2, 30, new[] { 87.988, 82.094, 65.991, 43.994, 21.997, 5.894, 0 })]
    [InlineData(84, 15, new[] { 45.015, 42.000, 33.762, 22.508, 11.254, 3.015, 0 })]
    public void Straight_CylinderOnTiltedPlane_HasTheOrdinatesOfTheTables(double radius, double tilt, double[] expected)
    {
        var foot = Foot(radius, tilt);

        var unrolled = TubeUnrolling.Straight(foot);

        var half = foot.Length / 2;
        var lowest = unrolled.Min(point => point.Y);
        Assert.All(expected.Index(), entry => Assert.InRange(unrolled[half + (entry.Index * half / 6)].Y - lowest, entry.Item - 0.01, entry.Item + 0.01));
        // The chords of a polygon of the circle's area are a little longer: less than 0.05 mm.
        Assert.InRange(unrolled[^1].X, 2 * Math.PI * radius, (2 * Math.PI * radius) + 0.05);
    }

    [Fact]
    public void Straight_AnyFoot_KeepsTheLengthOfEveryStep() => Gen.Double[40, 600].Select(Gen.Double[0, 74]).Sample((radius, tilt) =>
    {
        var foot = Foot(radius, tilt);

        var unrolled = TubeUnrolling.Straight(foot);

        Assert.All(Enumerable.Range(0, foot.Length), i => Assert.Equal(Point3.Distance(foot[i], foot[(i + 1) % foot.Length]), Point2.Distance(unrolled[i], unrolled[i + 1]), 1e-9));
    });

    [Fact]
    public void Straight_Radius100Tilt30_FootIsAsLongAsTheEllipse()
    {
        var unrolled = TubeUnrolling.Straight(Foot(100, 30));

        // Own calculation: 4 a E(e) of the ellipse 115.470 x 100; chords within 0.03 mm.
        Assert.InRange(unrolled.Zip(unrolled.Skip(1)).Sum(pair => Point2.Distance(pair.First, pair.Second)), 677.792 - 0.03, 677.792 + 0.03);
    }

    [Fact]
    public void Cone_Frustum_HasThePublishedRadiiAndSector()
    {
        // [ceemrr]: diameters 5 and 8 in, 4 in apart: 7.12, 11.39, 126.4 degrees; here a hundred times as large. Apex by like triangles: 4 x 4 / 1.5.
        ImmutableArray<Point3> foot = [.. Circles.Slanting(400, 1).Select(point => new Point3(point.X, point.Y, 0))];

        var (lower, upper) = TubeUnrolling.Cone(foot, 400 * 4 / 1.5, 400);

        Assert.All(upper, point => Assert.InRange(point.Length, 712.00 - 0.02, 712.00 + 0.02));
        Assert.All(lower, point => Assert.InRange(point.Length, 1139.20 - 0.03, 1139.20 + 0.03));
        var sector = (Math.Atan2(lower[^1].Y, lower[^1].X) - Math.Atan2(lower[0].Y, lower[0].X)) * 180 / Math.PI;
        Assert.InRange(sector, 126.4044 - 0.01, 126.4044 + 0.01);
    }

    [Fact]
    public void Cone_OnTiltedPlane_HasTheRadiiOfTheClosedForm()
    {
        // Own calculation: top radius 76.2 at 150 over the foot of the axis, half angle 20, tilt 30 degrees: top 222.794, sector 123.127 degrees.
        double[] expected = [316.014, 323.541, 346.060, 382.421, 427.319, 467.498, 484.161];
        var (half, tilt) = (Math.Tan(20 * Math.PI / 180), Math.Tan(30 * Math.PI / 180));
        var apex = 150 + (76.2 / half);
        ImmutableArray<Point3> foot =
        [
            .. Enumerable.Range(0, 720).Select(i => i * Math.PI / 360).Select(angle =>
            {
                // From the highest point round: the ray meets the plane z = rho tan t cos(angle).
                var distance = apex * half / (1 + (half * tilt * Math.Cos(angle)));
                return new Point3(distance * Math.Cos(angle), distance * Math.Sin(angle), distance * tilt * Math.Cos(angle));
            }),
        ];

        var (lower, upper) = TubeUnrolling.Cone(foot, apex, 150);

        Assert.All(expected.Index(), entry => Assert.Equal(entry.Item, lower[entry.Index * 60].Length, 0.01));
        Assert.All(upper, point => Assert.Equal(222.794, point.Length, 0.01));
        Assert.Equal(123.127, (Math.Atan2(lower[^1].Y, lower[^1].X) - Math.Atan2(lower[0].Y, lower[0].X)) * 180 / Math.PI, 0.01);
        Assert.All(Enumerable.Range(0, 720), i => Assert.Equal(Point3.Distance(foot[i], foot[(i + 1) % 720]), Point2.Distance(lower[i], lower[i + 1]), 1e-9));
    }
}
