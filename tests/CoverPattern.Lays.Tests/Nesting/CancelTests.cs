using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>Work that is stopped gives the best lay it has told of, and soon: counted in units of work, not in seconds.</summary>
public sealed class CancelTests
{
    [Fact]
    public void Nest_StoppedAtAnyReport_DoesNoUnitMoreAndGivesItsBest()
    {
        var task = FrozenDomes.Task("dome-2v", 1480) with { Effort = 6 };
        using var whole = new StopAt(int.MaxValue);
        Nester.Nest(task, whole, CancellationToken.None);

        // From the first lay through fills and cells into the last units of the search, one report each.
        foreach (var report in Enumerable.Range(0, 6).Select(k => 1 + (k * (whole.Lengths.Count - 2) / 5)))
        {
            using var told = new StopAt(report);

            var layout = Nester.Nest(task, told, told.Token);

            Assert.Equal(whole.Lengths.Take(report), told.Lengths);
            Assert.Empty(LayoutCheck.Check(task, layout));
            Assert.InRange(layout.Length, 0, told.Lengths.Min());
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(8)]
    public void Nest_ByHandStoppedEarly_GivesTheTightLayWithItsLength(int report)
    {
        // Rows are not made once the work is stopped: what there is is the tight lay, and it is no longer than itself.
        var task = FrozenDomes.Task("dome-2v", 1480) with { Effort = 6 };
        using var told = new StopAt(report);

        var layout = HandNester.Nest(task, told, told.Token);

        Assert.Equal(report, told.Lengths.Count);
        Assert.Empty(LayoutCheck.Check(task, layout));
        Assert.InRange(layout.Length, 0, told.Lengths.Min());
        Assert.Equal(layout.Length, layout.TightLength);
    }

    [Fact]
    public void NestWithin_StoppedAtItsFirstReport_PlacesWhatItCan()
    {
        var task = FrozenDomes.Task("dome-2v", 1480) with { Effort = 6 };
        var limit = 10_000.0;
        using var told = new StopAt(1);

        var layout = new OutlineNest(CoverPattern.Patterns.Jobs.LayStyle.Tight, told, told.Token).NestWithin(task, limit);

        Assert.Single(told.Lengths);
        Assert.NotEmpty(layout.Placements);
        Assert.InRange(layout.Length, 0, limit);
    }

    /// <summary>Cancels the work at one of its reports.</summary>
    private sealed class StopAt(int report) : IProgress<NestingProgress>, IDisposable
    {
        private readonly CancellationTokenSource source = new();

        public CancellationToken Token => source.Token;

        public List<double> Lengths { get; } = [];

        public void Report(NestingProgress value)
        {
            Lengths.Add(value.Length);
            if (Lengths.Count == report)
            {
                source.Cancel();
            }
        }

        public void Dispose() => source.Dispose();
    }
}
