using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>The lay that is at hand first, before anything is searched.</summary>
public sealed class FirstLayTests
{
    [Theory]
    [InlineData("dome-2v", 1330)]
    [InlineData("dome-2v", 1980)]
    [InlineData("dome-2v-windows", 1480)]
    [InlineData("dome-3v", 1330)]
    [InlineData("dome-3v", 1480)]
    [InlineData("dome-3v", 1980)]
    [InlineData("dome-3v-windows", 1980)]
    [InlineData("dome-4v", 1480)]
    [InlineData("dome-4v", 1980)]
    [InlineData("dome-5v", 1980)]
    [InlineData("dome-6v", 1480)]
    public void Nest_StoppedAtItsFirstLay_IsNoLongerThanRowsAndBoxes(string name, double width)
    {
        var task = FrozenDomes.Task(name, width);
        using var first = new StopAtFirst();

        var layout = Nester.Nest(task, first, first.Token);

        Assert.Empty(LayoutCheck.Check(task, layout));
        Assert.InRange(layout.Length, 0, RowFill.Fill(task).Length);
        Assert.InRange(layout.Length, 0, ShelfFill.Fill(task).Length);
        Assert.Equal(first.Lengths[0], layout.Length);
    }

    [Fact]
    public void Nest_Trapezoids_FirstLayIsTheClosedForm()
    {
        // A trapezoid and its half turn make a parallelogram of 500 + 300; three rows of 200 on 600 mm; 24 in a row end after 12 x 800 + 100.
        var task = new NestingTask(600, 0, [new NestingItem([new(0, 0), new(500, 0), new(400, 200), new(100, 200)], [], 72, AllowedTurns.HalfTurn)], Effort: 1, Seed: 1);
        using var first = new StopAtFirst();

        var layout = Nester.Nest(task, first, first.Token);

        Assert.Equal((12 * 800) + 100, layout.Length, tolerance: 0.01);
    }

    [Fact]
    public void Nest_ManyUnlike_TellsLengthsThatOnlyFall()
    {
        var task = FrozenDomes.Task("dome-3v", 1480) with { Effort = 4 };
        using var all = new StopAtFirst { MayGoOn = true };

        var layout = Nester.Nest(task, all, all.Token);

        Assert.True(all.Lengths.Count > 1);
        Assert.Equal(all.Lengths.OrderDescending(), all.Lengths);
        Assert.InRange(layout.Length, 0, all.Lengths[^1]);
    }

    /// <summary>Cancels the work as soon as it tells of a lay.</summary>
    private sealed class StopAtFirst : IProgress<NestingProgress>, IDisposable
    {
        private readonly CancellationTokenSource source = new();

        public CancellationToken Token => source.Token;

        public bool MayGoOn { get; init; }

        public List<double> Lengths { get; } = [];

        public void Report(NestingProgress value)
        {
            Lengths.Add(value.Length);
            if (!MayGoOn)
            {
                source.Cancel();
            }
        }

        public void Dispose() => source.Dispose();
    }
}
