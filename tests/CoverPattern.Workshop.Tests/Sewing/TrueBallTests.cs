using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Every divided solid, held against a second construction: points merged by place, facets as the convex hull.</summary>
public class TrueBallTests
{
    public static TheoryData<FrameFamily, FrameDivision, int> Balls { get; } = MakeBalls();

    [Theory]
    [MemberData(nameof(Balls))]
    public void Divide_EveryFamilyAndFrequency_IsTheHullOfItsPoints(FrameFamily family, FrameDivision division, int frequency)
    {
        var wish = new FrameWish(family, frequency, 0, "", FrameMeasure.Radius, new Measure(1, "1")) { Division = division, Up = (FrameUp)(frequency % 3) };

        var ball = Ball.Divide(wish);

        // Computed here and there in double precision: 1e-12 is a thousand roundings.
        var (points, faces) = TrueBall.Of(wish);
        Assert.Equal(points.Count, ball.Points.Length);
        int[] own = [.. ball.Points.Select(point => Nearest(points, point))];
        Assert.All(own.Zip(ball.Points), pair => Assert.InRange(points[pair.First].DistanceTo(new SpacePoint(pair.Second.X, pair.Second.Y, pair.Second.Z)), 0, 1e-12));
        Assert.Equal(faces.Select(Key).Order(), ball.Facets.Select(facet => Key([.. facet.Select(hub => own[hub])])).Order());
    }

    private static int Nearest(IReadOnlyList<SpacePoint> points, Point3 to) =>
        Enumerable.Range(0, points.Count).MinBy(i => points[i].DistanceTo(new SpacePoint(to.X, to.Y, to.Z)));

    /// <summary>Counter-clockwise from its lowest hub.</summary>
    private static (int, int, int) Key(int[] face)
    {
        var start = System.Array.IndexOf(face, face.Min());
        return (face[start], face[(start + 1) % 3], face[(start + 2) % 3]);
    }

    private static TheoryData<FrameFamily, FrameDivision, int> MakeBalls()
    {
        var balls = new TheoryData<FrameFamily, FrameDivision, int>();
        foreach (var family in new[] { FrameFamily.Icosahedron, FrameFamily.Octahedron })
        {
            for (var frequency = 1; frequency <= 12; frequency++)
            {
                balls.Add(family, FrameDivision.EqualChord, frequency);
                balls.Add(family, FrameDivision.EqualArc, frequency);
                if (frequency % 2 == 0)
                {
                    balls.Add(family, FrameDivision.ClassTwo, frequency);
                }
            }
        }

        balls.Add(FrameFamily.Icosahedron, FrameDivision.LevelByEdgeHubs, 3);
        balls.Add(FrameFamily.Icosahedron, FrameDivision.LevelByEdgeHubs, 4);
        balls.Add(FrameFamily.Icosahedron, FrameDivision.LevelByInnerHubs, 4);
        return balls;
    }
}
