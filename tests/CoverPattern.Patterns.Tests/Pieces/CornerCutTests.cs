using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Pieces;

public class CornerCutTests
{
    private const double Side = 1000;

    /// <summary>Triangles with a side of 1 m and angles of 30 degrees and more, with three allowances.</summary>
    private static readonly Gen<(double Left, double Right, double[] Allowances)> Triangles =
        from left in Gen.Double[30, 110]
        from right in Gen.Double[30, 150 - left]
        from allowances in Gen.OneOf(Gen.Double[5, 40].Select(a => new[] { a, a, a }), Gen.Double[0, 40].Array[3])
        select (left, right, allowances);

    [Theory]
    [InlineData(CornerStyle.Squared, 15)]
    [InlineData(CornerStyle.Trimmed, 2)]
    public void Draw_EqualSidedTriangle_LosesTheThreePoints(CornerStyle style, double kept)
    {
        // By hand: at 60 degrees the mitre's point stands out 2 x 15 mm and is itself 60 degrees sharp; cut across at a distance k
        // from the corner a triangle of height 30 - k goes, (30 - k)^2 tan 30.
        var edges = Edges(60, 60, [15, 15, 15]);

        var mitred = Rings.SignedArea(Draw(edges, CornerStyle.Mitred));
        var cut = Rings.SignedArea(Draw(edges, style));

        Assert.Equal(3 * (30 - kept) * (30 - kept) * Math.Tan(Math.PI / 6), mitred - cut, 1.0);
    }

    [Fact]
    public void Draw_RimOfAScreenOnATrimmedJob_KeepsItsLapRoundTheCorners()
    {
        // By hand: 400 x 250 with a lap of 40 mm all round is 480 x 330, corners and all.
        Point2[] corners = [new(0, 0), new(400, 0), new(400, 250), new(0, 250)];
        ImmutableArray<SewEdge> edges = [.. corners.Select((corner, i) => new SewEdge(corner, corners[(i + 1) % 4], EdgeRole.Rim, 40))];

        Assert.Equal(480 * 330, Rings.SignedArea(Draw(edges, CornerStyle.Trimmed)), 1e-6);
    }

    [Fact]
    public void Draw_AnyTriangle_IsSimpleAndHoldsTheSewLine() => Triangles.Sample(triangle =>
    {
        foreach (var style in Enum.GetValues<CornerStyle>())
        {
            var edges = Edges(triangle.Left, triangle.Right, triangle.Allowances);
            var cut = Draw(edges, style);

            var steps = Rings.ToSteps(cut);
            Assert.True(ExactPredicates.IsSimple(steps));
            // A grid step of rounding where an edge has no allowance.
            Assert.All(edges, edge => Assert.True(
                ExactPredicates.Locate(steps, Grid.ToSteps(edge.From)) >= 0 || DistanceTo(cut, edge.From) < 0.002));
        }
    });

    [Fact]
    public void Draw_AnyTriangle_KeepsTheWholeAllowanceButAtTrimmedCorners() => Triangles.Sample(triangle =>
    {
        var edges = Edges(triangle.Left, triangle.Right, triangle.Allowances);
        var squared = Draw(edges, CornerStyle.Squared);
        var trimmed = Draw(edges, CornerStyle.Trimmed);

        foreach (var edge in edges)
        {
            var length = Point2.Distance(edge.From, edge.To);
            // Trimming an angle takes at most the widest allowance / tan 30 from an edge: angles are 30 degrees and more.
            var kept = triangle.Allowances.Max() / Math.Tan(Math.PI / 6);
            Assert.All(new[] { 0.01, 1, length / 2, length - 1, length - 0.01 }, at => Assert.True(Holds(squared, edge, at)));
            Assert.All(new[] { kept, length / 2, length - kept }.Where(at => at > kept - 0.001 && at < length - kept + 0.001), at => Assert.True(Holds(trimmed, edge, at)));
        }
    });

    /// <summary>Folding on paper: the allowance turned back about its edge stays inside the other edge, but for the margin of 2 mm.</summary>
    [Fact]
    public void Draw_TrimmedCorner_FoldsBackInside() => Triangles.Sample(triangle =>
    {
        var edges = Edges(triangle.Left, triangle.Right, triangle.Allowances);
        var cut = Draw(edges, CornerStyle.Trimmed);

        foreach (var (edge, next) in edges.Select((edge, i) => (edge, edges[(i + 1) % 3])))
        {
            foreach (var point in cut.Where(point => Beyond(edge, point) > 0.01 && Point2.Dot(point - edge.To, edge.Along) > -40 / Math.Tan(Math.PI / 6) && Beyond(next, point) < Beyond(edge, point)))
            {
                var folded = point - (2 * Beyond(edge, point) * edge.Outward);
                Assert.True(Beyond(next, folded) < CornerCut.Margin + 0.01, FormattableString.Invariant($"stands out {Beyond(next, folded)}"));
            }
        }
    });

    [Theory]
    [InlineData(CornerStyle.Squared, MakeUpForm.Felled)]
    [InlineData(CornerStyle.Squared, MakeUpForm.Welded)]
    [InlineData(CornerStyle.Trimmed, MakeUpForm.Plain)]
    [InlineData(CornerStyle.Trimmed, MakeUpForm.Welded)]
    [InlineData(CornerStyle.Trimmed, MakeUpForm.FolderFelled)]
    public void Finish_WholeDome_NoFaultAndLessCloth(CornerStyle style, MakeUpForm form)
    {
        var mitred = Jobs.Dome(4, 7, 2500) with { Seam = SeamWish.Of(form, Jobs.Mm(20)) };
        var job = mitred with { Seam = mitred.Seam with { Corners = style } };

        var (plain, cut) = (Jobs.Pieces(mitred).Finishing, Jobs.Pieces(job).Finishing);

        Assert.Empty(cut.Faults);
        Assert.Equal(plain.Set.Patterns.Length, cut.Set.Patterns.Length);
        Assert.All(plain.Set.Patterns.Zip(cut.Set.Patterns), pair => Assert.True(Rings.SignedArea(pair.Second.CutLine) < Rings.SignedArea(pair.First.CutLine)));
        Assert.All(cut.Set.Patterns, pattern => Assert.All(pattern.Notches, notch =>
            Assert.True(ExactPredicates.Locate(Rings.ToSteps(pattern.CutLine), Grid.ToSteps(notch.Outer)) >= 0 || DistanceTo(pattern.CutLine, notch.Outer) < 0.002)));
    }

    private static ImmutableArray<SewEdge> Edges(double left, double right, double[] allowances)
    {
        var (tanLeft, tanRight) = (Math.Tan(left * Math.PI / 180), Math.Tan(right * Math.PI / 180));
        var across = Side * tanRight / (tanLeft + tanRight);
        ImmutableArray<Point2> ring = [new(0, 0), new(Side, 0), Math.Abs(left - 90) < 1e-9 ? new(0, Side * tanRight) : new(across, across * tanLeft)];
        return [.. ring.Select((corner, i) => new SewEdge(Grid.Snap(corner), Grid.Snap(ring[(i + 1) % 3]), EdgeRole.Seam, allowances[i]))];
    }

    private static ImmutableArray<Point2> Draw(ImmutableArray<SewEdge> edges, CornerStyle style) =>
        CutLine.Draw([.. edges.Select(edge => edge with { Corner = style })], default);

    private static double Beyond(SewEdge edge, Point2 point) => Point2.Dot(point - edge.From, edge.Outward);

    private static bool Holds(ImmutableArray<Point2> cut, SewEdge edge, double at)
    {
        var point = edge.From + (at * edge.Along) + (edge.Allowance * edge.Outward);
        return ExactPredicates.Locate(Rings.ToSteps(cut), Grid.ToSteps(point)) >= 0 || DistanceTo(cut, point) < 0.005;
    }

    private static double DistanceTo(ImmutableArray<Point2> ring, Point2 point) =>
        Enumerable.Range(0, ring.Length).Min(i => Segments.Distance(ring[i], ring[(i + 1) % ring.Length], point));
}
