using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Tests.Openings;

public class ClearBoxTests
{
    private static readonly Job Bare = Patterns.Tests.Jobs.Dome(3, 5, 3657.6) with { Clearances = Free(0), StandOff = new StandOffWish(Mm(0), Mm(0), Mm(0)) { HubRadius = Mm(0) } };

    [Fact]
    public void Of_FacetOnItsBase_IsHalfItsBaseByHalfItsHeight()
    {
        var (frame, facet) = Base(Bare);
        var (foot, height, perimeter) = Sizes(frame, facet);

        var box = ClearBox.Of(Bare, frame, facet);

        // The rectangle on a triangle's base is largest at half the height: area b h / 4 (calculus, closed form).
        Assert.Equal(foot / 2, box.WidthMm, 0.5);
        Assert.Equal(height / 2, box.HeightMm, 0.5);
    }

    [Fact]
    public void Of_TubesKeptClear_IsThatOfTheSmallerTriangle()
    {
        var job = Bare with { Clearances = Free(20), StandOff = new StandOffWish(Mm(17), Mm(25), Mm(0)) { HubRadius = Mm(0) } };
        var (frame, facet) = Base(job);
        var (foot, height, perimeter) = Sizes(frame, facet);
        var inradius = foot * height / perimeter;

        var box = ClearBox.Of(job, frame, facet);

        // Sides moved in by 37 mm leave the triangle smaller by the share of its inscribed circle, and hubs of no size cut off what no box reaches.
        var share = 1 - (37 / inradius);
        Assert.Equal(share * foot / 2, box.WidthMm, 0.5);
        Assert.Equal(share * height / 2, box.HeightMm, 0.5);
    }

    [Fact]
    public void HighestOf_Width_IsWhereTheTriangleIsStillThatWide()
    {
        var (frame, facet) = Base(Bare);
        var (foot, height, perimeter) = Sizes(frame, facet);

        // A box w wide under the tip of a triangle on its base is h (1 - w / b) high (similar triangles).
        Assert.Equal(height * (1 - (400 / foot)), ClearBox.HighestOf(Bare, frame, facet, 400), 0.5);
        Assert.Equal(0, ClearBox.HighestOf(Bare, frame, facet, foot + 1));
    }

    /// <summary>A frame, and a facet of its lowest row that stands on its base chord.</summary>
    private static (Frame Frame, int Facet) Base(Job job)
    {
        var frame = FrameBuilder.Build(job.Frame);
        return (frame, Enumerable.Range(0, frame.Facets.Length).First(i => frame.Facets[i].Row == 1 && HubsOf(frame, i).Count(hub => frame.Hubs[hub].Label.StartsWith("H0.", StringComparison.Ordinal)) == 2));
    }

    private static int[] HubsOf(Frame frame, int facet) => [.. frame.Facets[facet].Hubs];

    /// <summary>Base and height of the facet in its plane, by Heron's way from its foot.</summary>
    private static (double Base, double Height, double Perimeter) Sizes(Frame frame, int facet)
    {
        var hubs = HubsOf(frame, facet).OrderByDescending(hub => frame.Hubs[hub].Label.StartsWith("H0.", StringComparison.Ordinal)).Select(hub => frame.Hubs[hub].Position).ToArray();
        var (a, b, c) = (Point3.Distance(hubs[0], hubs[1]), Point3.Distance(hubs[1], hubs[2]), Point3.Distance(hubs[2], hubs[0]));
        var s = (a + b + c) / 2;
        return (a, 2 * Math.Sqrt(s * (s - a) * (s - b) * (s - c)) / a, a + b + c);
    }

    private static Measure Mm(double millimetres) => new(millimetres, FormattableString.Invariant($"{millimetres} mm"));

    private static ClearanceWish Free(double tube) => ClearanceWish.Usual with { Tube = Mm(tube), Hub = Mm(0) };
}
