using System;
using System.Collections.Immutable;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;
using CoverPattern.Lays.Nesting.Search;

namespace CoverPattern.Lays.Tests.Nesting.Search;

/// <summary>Turns between the prepared ones.</summary>
public sealed class TurningTests
{
    [Fact]
    public void Find_FreeOutlines_AreProvedAndRepeatOnOneThreadAndTwo()
    {
        var task = Stars(AllowedTurns.Free);

        var (one, two) = (Find(task, 1), Find(task, 2));

        Assert.Empty(LayoutCheck.Check(task, one));
        Assert.Equal(one.Length, two.Length);
        Assert.True(one.Placements.SequenceEqual(two.Placements));
    }

    [Fact]
    public void Find_FreeOutlines_LieInTurnsThatNobodyPrepared()
    {
        var task = Stars(AllowedTurns.Free);
        var prepared = ShapePreparer.Prepare(task).Select(turns => turns.Select(shape => shape.TurnDegrees).ToArray()).ToArray();

        var layout = Find(task, 2);

        Assert.Contains(layout.Placements, place => !prepared[place.Item].Contains(place.TurnDegrees));
    }

    [Fact]
    public void Find_CrookedGrain_KeepsItsBounds()
    {
        var task = Stars(AllowedTurns.HalfTurn with { Within = 2 });

        var layout = Find(task, 2);

        Assert.Empty(LayoutCheck.Check(task, layout));
        Assert.All(layout.Placements, place => Assert.InRange(Math.Abs(Math.IEEERemainder(place.TurnDegrees, 180)), 0, 2));
    }

    private static NestingLayout Find(NestingTask task, int threads) =>
        StripSearch.Find(task, new SearchOptions { Threads = threads }, CancellationToken.None);

    private static NestingTask Stars(AllowedTurns turns)
    {
        var chance = new Random(7);
        return new NestingTask(400, 2, [.. Enumerable.Range(0, 6).Select(_ => Outlines.Item(Outlines.Star(chance, 120), 2, turns))], Effort: 4, Seed: 3);
    }
}
