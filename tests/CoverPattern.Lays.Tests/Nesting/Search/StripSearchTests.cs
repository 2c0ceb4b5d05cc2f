using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

public class StripSearchTests
{
    private static readonly SearchSettings Brief = SearchSettings.Default with { EvaluationsPerUnit = 2_000 };

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(3, 3)]
    [InlineData(4, 0.5)]
    public void Find_RandomItems_LayHolds(int seed, double spacing)
    {
        var task = RandomOutlines.Mixed(seed, spacing, effort: 20);

        var layout = Find(task, SearchOptions.None);

        NtsProof.AssertHolds(task, layout);
    }

    [Fact]
    public void Find_OneThreadOrTwoTablesOrNone_SameLay()
    {
        var task = RandomOutlines.Mixed(5, 0, effort: 10);

        var two = Find(task, SearchOptions.None);
        var one = Find(task, SearchOptions.None with { Threads = 1 });
        var plain = StripSearch.Find(task, SearchOptions.None, Brief with { Tables = false }, CancellationToken.None);

        Assert.Equal<NestingPlacement>([.. two.Placements], [.. one.Placements]);
        Assert.Equal<NestingPlacement>([.. two.Placements], [.. plain.Placements]);
    }

    [Fact]
    public void Find_StartLay_IsNeverMadeLonger()
    {
        var task = RandomOutlines.Mixed(6, 2, effort: 10);
        var first = Find(task, SearchOptions.None);

        var second = Find(task with { Seed = 77 }, SearchOptions.None with { Start = first });

        Assert.True(second.Length <= first.Length);
        NtsProof.AssertHolds(task, second);
    }

    [Fact]
    public void Find_CancelledAtOnce_GivesFirstLay()
    {
        var task = RandomOutlines.Mixed(7, 0, effort: int.MaxValue);
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        var layout = StripSearch.Find(task, SearchOptions.None, cancel.Token);

        NtsProof.AssertHolds(task, layout);
    }

    [Fact]
    public void Find_FreeTurnsAndMirroring_LayHolds()
    {
        ImmutableArray<Point2> hook = [new(0, 0), new(40, 0), new(40, 10), new(10, 10), new(10, 30), new(0, 30)];
        var task = new NestingTask(70, 1, [new NestingItem(hook, [], 5, AllowedTurns.Free, MayMirror: true)], 10, 1);

        var layout = Find(task, SearchOptions.None);

        NtsProof.AssertHolds(task, layout);
    }

    [Fact]
    public void Find_SmallPieceAndFrame_UsesHole()
    {
        ImmutableArray<Point2> square = [new(0, 0), new(20, 0), new(20, 20), new(0, 20)];
        var task = new NestingTask(100, 0, [RandomOutlines.Frame(100, 50, 1), RandomOutlines.Item(square, 4, AllowedTurns.None)], 40, 1);

        var layout = Find(task, SearchOptions.None);

        // The frame alone is 100 long and as wide as the strip; four squares of 20 fit into its hole of 50.
        NtsProof.AssertHolds(task, layout);
        Assert.Equal(100, layout.Length);
    }

    [Fact]
    public void Find_Rectangles_FillsStrip()
    {
        // Nine rectangles of 30 x 20 tile 90 x 60 exactly, by closed form: every one must touch its neighbours.
        ImmutableArray<Point2> brick = [new(0, 0), new(30, 0), new(30, 20), new(0, 20)];
        var task = new NestingTask(60, 0, [RandomOutlines.Item(brick, 9, AllowedTurns.None)], 100, 1);

        var layout = Find(task, SearchOptions.None);

        NtsProof.AssertHolds(task, layout);
        Assert.Equal(90, layout.Length);
    }

    [Fact]
    public void Find_StartLayShorterThanAnythingFound_IsGivenBack()
    {
        // Two bricks of the strip's width one behind the other: no lay is shorter than 30.
        ImmutableArray<Point2> brick = [new(0, 0), new(15, 0), new(15, 20), new(0, 20)];
        var task = new NestingTask(20, 0, [RandomOutlines.Item(brick, 2, AllowedTurns.None)], 2, 1);
        var start = new NestingLayout(30, [new(0, 0, new Point2(0, 0)), new(0, 0, new Point2(15, 0))], "by hand");

        var layout = Find(task, SearchOptions.None with { Start = start });

        Assert.Same(start, layout);
    }

    [Fact]
    public void Find_ItemWiderThanStrip_Throws()
    {
        ImmutableArray<Point2> plate = [new(0, 0), new(50, 0), new(50, 30), new(0, 30)];
        var task = new NestingTask(20, 0, [RandomOutlines.Item(plate, 1, AllowedTurns.HalfTurn)], 1, 1);

        Assert.Throws<ItemTooWideException>(() => Find(task, SearchOptions.None));
    }

    [Fact]
    public void Find_LockedCopies_StayWhereTheyLie()
    {
        var task = RandomOutlines.Mixed(8, 1, effort: 10);
        var first = Find(task with { Effort = 1 }, SearchOptions.None);

        var second = Find(task, SearchOptions.None with { Start = first, Locked = [2, 5] });

        NtsProof.AssertHolds(task, second);
        Assert.Equal(first.Placements[2], second.Placements[2]);
        Assert.Equal(first.Placements[5], second.Placements[5]);
    }

    [Fact]
    public void Find_LockedCopiesOnEachOther_Throws()
    {
        ImmutableArray<Point2> brick = [new(0, 0), new(15, 0), new(15, 20), new(0, 20)];
        var task = new NestingTask(40, 0, [RandomOutlines.Item(brick, 2, AllowedTurns.None)], 1, 1);
        var start = new NestingLayout(25, [new(0, 0, new Point2(0, 0)), new(0, 0, new Point2(10, 0))], "by hand");

        var error = Assert.Throws<ArgumentException>(() => Find(task, SearchOptions.None with { Start = start, Locked = [0, 1] }));

        Assert.Contains("item 0", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_JigsawOfEight_IsSolvedExactly()
    {
        // A square of 100 cut along chords between whole points (own cuts): the only lay of length 100 is the square itself.
        ImmutableArray<ImmutableArray<Point2>> pieces =
        [
            [new(100, 39), new(100, 57), new(0, 58), new(0, 55)],
            [new(0, 55), new(0, 49), new(90, 0), new(100, 0), new(100, 11)],
            [new(0, 58), new(100, 57), new(100, 80)],
            [new(100, 80), new(100, 97), new(0, 69), new(0, 58)],
            [new(0, 55), new(100, 11), new(100, 39)],
            [new(100, 97), new(100, 100), new(0, 100), new(0, 69)],
            [new(0, 41), new(0, 0), new(59, 0)],
            [new(59, 0), new(90, 0), new(0, 49), new(0, 41)],
        ];
        var task = new NestingTask(100, 0, [.. pieces.Select(piece => RandomOutlines.Item(piece, 1, AllowedTurns.None))], 2_000, 1);

        var layout = Find(task, SearchOptions.None);

        NtsProof.AssertHolds(task, layout);
        Assert.Equal(100, layout.Length);
    }

    private static NestingLayout Find(NestingTask task, SearchOptions options) =>
        StripSearch.Find(task, options, Brief, CancellationToken.None);
}
