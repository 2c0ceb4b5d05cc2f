using System;
using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>What a search may be given besides its task.</summary>
public sealed record SearchOptions
{
    public static SearchOptions None { get; } = new();

    /// <summary>A lay to start from: an earlier or hand-moved one, or one made by a simpler method. It must be free of overlaps.</summary>
    public NestingLayout? Start { get; init; }

    /// <summary>Indexes into the start lay's placements that stay where they lie.</summary>
    public ImmutableArray<int> Locked { get; init; } = [];

    /// <summary>Stops the search after this time, between work units; the result then depends on the machine's speed. None: effort alone decides.</summary>
    public TimeSpan? TimeLimit { get; init; }

    /// <summary>A lay of this length is short enough, millimetres: the search ends between work units. 0: none is.</summary>
    public double EnoughLength { get; init; }

    /// <summary>
    /// Whether the strip is bent round until its ends meet: the lay found may be repeated along the strip, and its length is the
    /// distance from one repeat to the next. Without a start lay, flawed areas and locked copies.
    /// </summary>
    internal bool IsRound { get; init; }

    /// <summary>Measures the time limit.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Hears of every work unit; called on the searching thread.</summary>
    public Action<SearchProgress>? Progress { get; init; }

    /// <summary>Threads for the two logical workers, 1 or 2; the result is the same.</summary>
    public int Threads { get; init; } = 2;
}
