using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

/// <summary>Places at which one shape leans against another.</summary>
public class LeaningTests
{
    private const double Step = 1.0 / Grid.StepsPerMillimetre;

    // Two convex outlines of which one leans on an edge of the other lie on two sides of that edge. Second opinion: the geometry library.
    [Fact]
    public void Draw_ConvexOutlines_TouchAndDoNotOverlap()
    {
        var chance = new Chance(5, 0);
        for (var pair = 0; pair < 300; pair++)
        {
            var (moved, other) = (RandomOutlines.Item(Convex(chance), 1, AllowedTurns.None), RandomOutlines.Item(Convex(chance), 1, AllowedTurns.None));

            var (x, y) = Leaning.Draw(Prepare(moved), Prepare(other), chance);

            var there = NtsProof.ToPolygon(moved, new NestingPlacement(0, 0, new GridPoint(x, y).ToPoint()));
            var here = NtsProof.ToPolygon(other, default);
            Assert.True(there.Distance(here) <= 2 * Step, FormattableString.Invariant($"pair {pair}: {there.Distance(here)} mm apart"));
            Assert.True(NtsProof.CommonArea(there, here) <= 2 * Step * here.Length, FormattableString.Invariant($"pair {pair} overlaps"));
        }
    }

    // Any outlines: a corner lies on an edge and the insides are apart there, so the shift is one of those the charts are made from.
    [Fact]
    public void Draw_AnyOutlines_ShiftIsOneAtWhichTheyTouch()
    {
        var chance = new Chance(6, 0);
        for (var pair = 0; pair < 300; pair++)
        {
            var (moved, other) = (Prepare(RandomOutlines.Item(Any(chance), 1, AllowedTurns.None)), Prepare(RandomOutlines.Item(Any(chance), 1, AllowedTurns.None)));
            var pieces = new List<Touching>();
            Touching.Collect(other, moved, pieces);

            var (x, y) = Leaning.Draw(moved, other, chance);

            Assert.True(pieces.Min(piece => Distance(piece, x, y)) <= 2, FormattableString.Invariant($"pair {pair}: {x}, {y}"));
        }
    }

    [Fact]
    public void Draw_FrameAndSquare_LeansInsideTheHoleToo()
    {
        var task = new NestingTask(100, 0, [RandomOutlines.Frame(20, 10, 1), RandomOutlines.Item([new(0, 0), new(4, 0), new(4, 4), new(0, 4)], 1, AllowedTurns.None)], 1, 1);
        var (frame, square, chance) = (ShapePreparer.Prepare(task)[0][0], ShapePreparer.Prepare(task)[1][0], new Chance(7, 0));

        var inside = Enumerable.Range(0, 200).Select(_ => Leaning.Draw(square, frame, chance)).Count(at => at.X is > 0 and < 16 * Grid.StepsPerMillimetre && at.Y is > 0 and < 16 * Grid.StepsPerMillimetre);

        // Own count: half of the draws lean a corner of the square on an edge of the frame, and half of its eight edges are the hole's; 50 of 200, give or take
        // five times their spread of 6.1.
        Assert.InRange(inside, 20, 80);
    }

    private static double Distance(Touching piece, double x, double y)
    {
        var (stepX, stepY) = (piece.ToX - piece.X, piece.ToY - piece.Y);
        var share = Math.Clamp((((x - piece.X) * stepX) + ((y - piece.Y) * stepY)) / ((stepX * stepX) + (stepY * stepY)), 0, 1);
        return Math.Sqrt(Math.Pow(piece.X + (share * stepX) - x, 2) + Math.Pow(piece.Y + (share * stepY) - y, 2));
    }

    private static ImmutableArray<Point2> Any(Chance chance) =>
        chance.Below(2) == 0 ? RandomOutlines.Stairs(chance) : RandomOutlines.Star(chance, chance.Between(3, 30), chance.Between(2, 6));

    private static ImmutableArray<Point2> Convex(Chance chance)
    {
        var hull = NtsProof.ToPolygon(RandomOutlines.Item(Any(chance), 1, AllowedTurns.None), default).ConvexHull().Coordinates;
        ImmutableArray<Point2> ring = [.. hull.Skip(1).Select(corner => new Point2(corner.X, corner.Y))];
        return Rings.SignedArea(ring) > 0 ? ring : [.. ring.Reverse()];
    }

    private static PreparedShape Prepare(NestingItem item) => ShapePreparer.Prepare(new NestingTask(1000, 0, [item], 1, 1))[0][0];
}
