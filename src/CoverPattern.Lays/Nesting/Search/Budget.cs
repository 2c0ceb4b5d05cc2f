using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Counts work units against effort and time limit.</summary>
internal sealed class Budget
{
    private readonly int _effort;
    private readonly SearchOptions _options;
    private readonly long _began;
    private int _units;

    public Budget(int effort, SearchOptions options)
    {
        (_effort, _options) = (Math.Max(1, effort), options);
        _began = options.TimeLimit is null ? 0 : options.Clock.GetTimestamp();
    }

    /// <summary>Counts one unit as done.</summary>
    /// <returns>Part of the budget that is spent, 1 or more when it is used up.</returns>
    public double NextShare() => Share(++_units);

    public double Share(int units)
    {
        var share = units / (double)_effort;
        return _options.TimeLimit is { } limit
            ? Math.Max(share, _options.Clock.GetElapsedTime(_began) / limit)
            : share;
    }
}
