using System.Collections.Generic;
using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The best states of struggles that failed at the present length, least tangled first.</summary>
internal sealed class Failures
{
    private const int Most = 40;

    private readonly List<(double Total, ImmutableArray<Spot> Spots)> _states = [];

    public int Count => _states.Count;

    public void Clear() => _states.Clear();

    public void Add(double total, ImmutableArray<Spot> spots)
    {
        var place = _states.Count;
        while (place > 0 && _states[place - 1].Total > total)
        {
            place--;
        }

        _states.Insert(place, (total, spots));
        if (_states.Count > Most)
        {
            _states.RemoveAt(Most);
        }
    }

    /// <summary>Draws a state, the less tangled the likelier.</summary>
    public ImmutableArray<Spot> Draw(Chance chance) => _states[(int)(chance.Unit() * chance.Unit() * _states.Count)].Spots;
}
