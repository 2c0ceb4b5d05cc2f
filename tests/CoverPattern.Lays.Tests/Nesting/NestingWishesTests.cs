using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Tests.Nesting.Search;
using CsCheck;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Holes, flawed areas, copies that stay, layouts to start from, crooked grain.</summary>
public class NestingWishesTests
{
    [Theory]
    [InlineData(0, 60)]
    [InlineData(5, 49.875)]
    public void Fill_SmallPieceThatFitsAHole_LiesInIt(double spacing, double side)
    {
        // A frame of 100 x 100 with a hole of 60 x 60 on a strip of 100: the square has room in the hole alone, all but exactly so.
        var square = Outlines.Item(Outlines.Box(side, side), 1, AllowedTurns.None);
        var task = new NestingTask(100, spacing, [RandomOutlines.Frame(100, 60, 1), square], 1, 1);

        var layout = BottomLeftFill.Fill(task, CancellationToken.None);

        Assert.Equal(100, layout.Length);
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    [Fact]
    public void Fill_RoundHole_HoldsASquare()
    {
        // A square of 50 has half a diagonal of 35.4; the hole, a ring of 40 corners, has a radius of 45.
        ImmutableArray<Point2> hole = [.. Enumerable.Range(0, 40).Select(k => Grid.Snap(new Point2(50 + (45 * Math.Cos(-k * Math.PI / 20)), 50 + (45 * Math.Sin(-k * Math.PI / 20)))))];
        var plate = new NestingItem(Outlines.Box(100, 100), [hole], 1, AllowedTurns.None);
        var task = new NestingTask(100, 0, [plate, Outlines.Item(Outlines.Box(50, 50), 1, AllowedTurns.None)], 1, 1);

        var layout = BottomLeftFill.Fill(task, CancellationToken.None);

        Assert.Equal(100, layout.Length);
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    [Fact]
    public void Nest_FlawedArea_IsLeftToThePiecesThatBearIt()
    {
        // The first 50 mm are flawed. Two boxes of 60 lie behind them (50 + 120), the one of 40 that bears the flaw on them.
        var task = new NestingTask(
            100,
            0,
            [Outlines.Item(Outlines.Box(60, 100), 2, AllowedTurns.None), Outlines.Item(Outlines.Box(40, 100), 1, AllowedTurns.None) with { Grade = 2 }],
            Effort: 4,
            Seed: 1)
        {
            Flaws = [new FlawedArea(Outlines.Box(50, 100), LeastGrade: 2)],
        };

        var layout = Nester.Nest(task, null, CancellationToken.None);

        Assert.Equal(170, layout.Length);
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    [Fact]
    public void Nest_CopiesThatStay_LieWhereTheyLay()
    {
        NestingPlacement stays = new(0, 180, new(130, 50));
        var task = new NestingTask(100, 3, [Outlines.Item(Outlines.Box(100, 40), 4, AllowedTurns.HalfTurn)], 2, 1) { Fixed = [stays] };

        var layout = Nester.Nest(task, null, CancellationToken.None);

        Assert.Contains(stays, layout.Placements);
        Assert.Empty(LayoutCheck.Check(task, layout));
    }

    public static TheoryData<string, NestingPlacement[]> Contradictions => new()
    {
        { "overlap", [new(0, 0, new(0, 0)), new(0, 0, new(50, 0))] },
        { "the strip begins", [new(0, 0, new(0, 90))] },
        { "turned by", [new(0, 45, new(0, 0))] },
        { "are to stay", [new(0, 0, new(0, 0)), new(0, 0, new(200, 0)), new(0, 0, new(400, 0))] },
        { "flawed area", [new(0, 0, new(990, 0))] },
    };

    [Theory]
    [MemberData(nameof(Contradictions))]
    public void Nest_CopiesThatCannotStay_AreRefusedWithTheReason(string reason, NestingPlacement[] stay)
    {
        ImmutableArray<Point2> flaw = [.. Outlines.Box(50, 50).Select(point => point + new Point2(1000, 0))];
        var task = new NestingTask(100, 0, [Outlines.Item(Outlines.Box(100, 40), 2, AllowedTurns.None)], 1, 1)
        {
            Fixed = [.. stay],
            Flaws = [new FlawedArea(flaw)],
        };

        var fault = Assert.Throws<ArgumentException>(() => Nester.Nest(task, null, CancellationToken.None));

        Assert.Contains(reason, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nest_LayoutToStartFrom_IsNeverMadeLonger()
    {
        var task = Outlines.RandomTask(5);
        var earlier = Nester.Nest(task with { Effort = 20 }, null, CancellationToken.None);

        var again = Nester.Nest(task with { Start = earlier }, null, CancellationToken.None);

        Assert.True(again.Length <= earlier.Length, $"{again.Length} after {earlier.Length}");
        Assert.Same(earlier, Nester.Keep(task, earlier));
    }

    [Fact]
    public void Keep_LayoutThatOverlaps_IsRefused()
    {
        var task = new NestingTask(100, 0, [Outlines.Item(Outlines.Box(100, 40), 2, AllowedTurns.None)], 1, 1);
        var layout = new NestingLayout(150, [new(0, 0, new(0, 0)), new(0, 0, new(50, 0))], "by hand");

        var fault = Assert.Throws<ArgumentException>(() => Nester.Keep(task, layout));

        Assert.Contains("overlap", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nest_CrookedGrain_FindsTheTurnThatFits()
    {
        // A bar of 300 x 20 drawn 3 degrees off is 35.7 mm high as drawn; a strip of 25 holds it only when it is laid straight.
        var (along, across) = (new Point2(Math.Cos(Math.PI / 60), Math.Sin(Math.PI / 60)), new Point2(-Math.Sin(Math.PI / 60), Math.Cos(Math.PI / 60)));
        var bar = Grid.Snap([new(0, 0), 300 * along, (300 * along) + (20 * across), 20 * across]);
        NestingTask Within(double degrees) => new(25, 0, [Outlines.Item([.. bar], 1, AllowedTurns.HalfTurn with { Within = degrees })], 1, 1);

        Assert.Throws<ItemTooWideException>(() => Nester.Nest(Within(1), null, CancellationToken.None));
        Assert.Equal(300, Nester.Nest(Within(5), null, CancellationToken.None).Length, tolerance: 0.01);
    }

    // Hole corners in pairs: over the outline's edge, running the wrong way, of no area.
    public static TheoryData<double[]> BadHoles => new()
    {
        new double[] { 50, 50, 50, 90, 110, 90, 110, 50 },
        new double[] { 20, 20, 40, 20, 40, 40, 20, 40 },
        new double[] { 20, 20, 30, 30, 40, 40 },
        new double[] { 20, 20, 20, 40, double.NaN, 40 },
    };

    [Theory]
    [MemberData(nameof(BadHoles))]
    public void Nest_HoleThatIsNone_IsRefused(double[] numbers)
    {
        var hole = numbers.Chunk(2).Select(pair => new Point2(pair[0], pair[1])).ToImmutableArray();
        var task = new NestingTask(100, 0, [new NestingItem(Outlines.Box(100, 100), [hole], 1, AllowedTurns.None)], 1, 1);

        Assert.Throws<ArgumentException>(() => Nester.Nest(task, null, CancellationToken.None));
    }

    [Fact]
    public void Nest_RandomTasksWithFlawsHolesAndCopiesThatStay_AreProvedAndRepeat()
    {
        Gen.Int[1, 100_000].Sample(
            seed =>
            {
                var task = WithWishes(Outlines.RandomTask(seed), new Random(seed));
                var (first, second) = (Nester.Nest(task, null, CancellationToken.None), Nester.Nest(task, null, CancellationToken.None));
                return LayoutCheck.Check(task, first).IsEmpty && first.Length == second.Length && first.Placements.SequenceEqual(second.Placements);
            },
            iter: 12,
            threads: 1);
    }

    private static NestingTask WithWishes(NestingTask task, Random chance)
    {
        var frame = RandomOutlines.Frame(200, 140, 1) with { Grade = 1 };
        var flaw = Outlines.Star(chance, 100).Select(point => point + new Point2(300, 100)).ToImmutableArray();
        return task with
        {
            Effort = 1,
            Items = [.. task.Items.Select((item, i) => item with { Grade = i % 3, Turns = item.Turns with { Within = 2 * (i % 2) } }), frame],
            Flaws = [new FlawedArea(flaw, LeastGrade: 1 + chance.Next(2)), new FlawedArea(Outlines.Box(20, 1000))],
            Fixed = [new NestingPlacement(task.Items.Length, 0, new(600, 50))],
        };
    }
}
