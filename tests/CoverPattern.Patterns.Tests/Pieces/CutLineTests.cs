using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace CoverPattern.Patterns.Tests.Pieces;

public class CutLineTests
{
    [Theory]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(5, 8)]
    public void CutLine_EqualAllowances_IsTheBufferOfAnotherLibrary(int frequency, int rows)
    {
        // NetTopologySuite's buffer with mitred joins; pieces without hem, all edges 15 mm, no corner sharp enough for the limit.
        var set = Jobs.Pieces(Jobs.Dome(frequency, rows, 3657.6)).Finishing.Set;
        var plain = set.Patterns.Where(pattern => pattern.Runs.All(run => run.Role == EdgeRole.Seam)).ToArray();

        Assert.NotEmpty(plain);
        Assert.All(plain, pattern =>
        {
            var buffer = new BufferOp(Polygon(pattern.SewLine), new BufferParameters(8, EndCapStyle.Flat, JoinStyle.Mitre, CutLine.MitreLimit) { SimplifyFactor = 1e-6 });
            var outside = buffer.GetResultGeometry(15).SymmetricDifference(Polygon(pattern.CutLine)).Area;
            // A grid step along the whole outline.
            Assert.True(outside < Rings.Perimeter(pattern.CutLine) / 1024);
        });
    }

    [Theory]
    [InlineData(MakeUpForm.Plain)]
    [InlineData(MakeUpForm.Lapped)]
    [InlineData(MakeUpForm.Felled)]
    [InlineData(MakeUpForm.Welded)]
    public void CutLine_AnyMakeUp_AddsStripsAndCorners(MakeUpForm makeUp)
    {
        // By hand: strips a x L, and at a corner of turn f between allowances a and b a kite of (2ab - (a2 + b2) cos f) / (2 sin f).
        var set = Jobs.Pieces(Jobs.Dome(3, 5, 3657.6) with { Seam = SeamWish.Of(makeUp, Jobs.Mm(20)) }).Finishing.Set;

        foreach (var pattern in set.Patterns.Where(pattern => pattern.Runs.All(run => run.Role == EdgeRole.Seam)))
        {
            var expected = Rings.SignedArea(pattern.SewLine) + pattern.Runs.Sum(run => run.AllowanceMm * run.LengthMm) + Corners(pattern).Sum();
            Assert.Equal(expected, Rings.SignedArea(pattern.CutLine), Rings.Perimeter(pattern.CutLine) / 1024);
        }
    }

    [Theory]
    [InlineData(MakeUpForm.Plain, 15)]
    [InlineData(MakeUpForm.Lapped, 25)]
    [InlineData(MakeUpForm.Felled, 15)]
    [InlineData(MakeUpForm.Welded, 40)]
    public void CutLine_AnySeam_HasItsWholeAllowanceFromEndToEnd(MakeUpForm makeUp, double width)
    {
        // Where a facet's edge runs on into the skirt's at a flat corner, a mitre between 40 and 0 mm would take away 66 mm of weld.
        var set = Jobs.Pieces(Jobs.Dome(4, 7, 2500) with { Seam = SeamWish.Of(makeUp, Jobs.Mm(width)) }).Finishing.Set;

        foreach (var pattern in set.Patterns)
        {
            var cut = Polygon(pattern.CutLine).Buffer(0.01);
            foreach (var run in pattern.Runs.Where(run => run.Role == EdgeRole.Seam))
            {
                var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
                var outward = -run.AllowanceMm * (to - from).Unit().QuarterTurned();
                Assert.All(new[] { 0, 0.01, 0.5, 0.99, 1 }, share =>
                {
                    var edge = Point2.Between(from, to, share) + outward;
                    Assert.True(cut.Covers(new Point(edge.X, edge.Y)), FormattableString.Invariant($"{pattern.Id} lacks allowance at {share} of run {run.From}."));
                });
            }
        }
    }

    [Fact]
    public void CutLine_SharpCorner_IsCutSquareAtTheLimit()
    {
        // A corner of 20 degrees: its full mitre would stand out 10 / sin 10 = 57.6 mm; the limit is 25.
        var tip = new Point2(300, 0);
        Point2 low = new(0, -300 * Math.Tan(Math.PI / 18)), high = new(0, 300 * Math.Tan(Math.PI / 18));
        ImmutableArray<Point2> ring = [low, tip, high];
        ImmutableArray<SewEdge> edges = [.. ring.Select((corner, i) => new SewEdge(corner, ring[(i + 1) % 3], EdgeRole.Seam, 10))];

        var cut = CutLine.Draw(edges, new HemFold(0, 0));

        Assert.Equal(325, cut.Max(point => point.X), 0.001);
        Assert.Equal(2, cut.Count(point => Math.Abs(point.X - 325) < 0.001));
    }

    [Theory]
    [InlineData(38, 12, MakeUpForm.Plain)]
    [InlineData(60, 0, MakeUpForm.Plain)]
    [InlineData(25, 25, MakeUpForm.Felled)]
    [InlineData(60, 0, MakeUpForm.Welded)]
    public void CutLine_Hem_FoldsBackOntoThePiece(double depth, double turnUnder, MakeUpForm makeUp)
    {
        // Folding on paper: a point y below the finished edge comes to lie y above it, the turn-under at 2h - y; it must be inside the piece.
        var set = Jobs.Pieces(Jobs.Dome(3, 5, 2500) with { Hem = new HemWish(Jobs.Mm(depth), Jobs.Mm(turnUnder)), Seam = SeamWish.Of(makeUp, Jobs.Mm(20)) }).Finishing.Set;
        var hemmed = set.Patterns.SelectMany(pattern => pattern.Runs.Where(run => run.Role == EdgeRole.Hem).Select(run => (pattern, run))).ToArray();

        Assert.NotEmpty(hemmed);
        foreach (var (pattern, run) in hemmed)
        {
            var (from, along) = (pattern.SewLine[run.From], (pattern.SewLine[run.To] - pattern.SewLine[run.From]).Unit());
            var inward = along.QuarterTurned();
            var outline = Polygon(pattern.CutLine).Buffer(0.01);
            var beyond = pattern.CutLine.Where(point => Point2.Dot(point - from, inward) < -0.01).ToArray();
            Assert.Equal(depth + turnUnder, beyond.Max(point => -Point2.Dot(point - from, inward)), 0.002);
            foreach (var point in beyond)
            {
                var below = -Point2.Dot(point - from, inward);
                var folded = below <= depth + 0.001 ? below : (2 * depth) - below;
                var lies = point + ((below + folded) * inward);
                Assert.True(outline.Covers(new Point(lies.X, lies.Y)), FormattableString.Invariant($"{pattern.Id}: {point} folds to {lies}"));
            }
        }
    }

    /// <summary>A sheet that ends 5 mm short of a rim, of which sides cross a fold 0.6 mm from two corners, begun at any corner: by hand a rectangle 10 mm smaller both ways.</summary>
    [Fact]
    public void Draw_SidesCrossAFoldBesideCorners_IsTheRectangleAllTheSame()
    {
        Point2[] ring = [new(0, 0.6), new(0, 0), new(844, 0), new(844, 0.6), new(844, 434), new(0, 434)];
        for (var first = 0; first < ring.Length; first++)
        {
            Point2[] turned = [.. ring[first..], .. ring[..first]];

            var cut = CutLine.Draw([.. turned.Select((corner, i) => new SewEdge(corner, turned[(i + 1) % turned.Length], EdgeRole.Rim, -5))], default);

            Assert.Equal([new(5, 5), new(839, 5), new(839, 429), new(5, 429)], cut.OrderBy(corner => corner.Y).ThenBy(corner => corner.Y < 100 ? corner.X : -corner.X));
        }
    }

    private static IEnumerable<double> Corners(Pattern pattern)
    {
        var count = pattern.Runs.Length;
        for (var i = 0; i < count; i++)
        {
            var (before, corner, after) = (pattern.SewLine[i], pattern.SewLine[(i + 1) % count], pattern.SewLine[(i + 2) % count]);
            var turn = Math.Atan2(Point2.Cross(corner - before, after - corner), Point2.Dot(corner - before, after - corner));
            var (a, b) = (pattern.Runs[i].AllowanceMm, pattern.Runs[(i + 1) % count].AllowanceMm);
            yield return ((2 * a * b) - (((a * a) + (b * b)) * Math.Cos(turn))) / (2 * Math.Sin(turn));
        }
    }

    private static Polygon Polygon(ImmutableArray<Point2> ring) =>
        new(new LinearRing([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]));
}
