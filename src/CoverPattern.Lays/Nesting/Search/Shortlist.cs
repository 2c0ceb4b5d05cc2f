using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The few cheapest spots found so far that differ enough, cheapest first.</summary>
internal sealed class Shortlist
{
    // Spots of one shape nearer than this part of its diameter lead to the same hollow.
    private const double Apart = 0.05;

    private readonly (Spot Spot, double Cost)[] _entries;

    public Shortlist(int size) => _entries = new (Spot, double)[size];

    public int Count { get; private set; }

    public (Spot Spot, double Cost) this[int place] => _entries[place];

    /// <summary>A spot that costs this or more is of no use; 0 ends the search.</summary>
    public double Bound => Count > 0 && _entries[0].Cost <= 0 ? 0
        : Count < _entries.Length ? double.PositiveInfinity
        : _entries[Count - 1].Cost;

    public void Clear() => Count = 0;

    public void Offer(in Spot spot, double cost)
    {
        var near = NearTo(spot);
        if (near >= 0)
        {
            if (_entries[near].Cost <= cost)
            {
                return;
            }

            RemoveAt(near);
        }

        if (Count == _entries.Length)
        {
            Count--;
        }

        var place = Count++;
        for (; place > 0 && _entries[place - 1].Cost > cost; place--)
        {
            _entries[place] = _entries[place - 1];
        }

        _entries[place] = (spot, cost);
    }

    private int NearTo(in Spot spot)
    {
        var reach = Apart * spot.Shape.Diameter;
        for (var k = 0; k < Count; k++)
        {
            ref readonly var other = ref _entries[k].Spot;
            if (other.Shape == spot.Shape && Math.Abs(other.X - spot.X) < reach && Math.Abs(other.Y - spot.Y) < reach)
            {
                return k;
            }
        }

        return -1;
    }

    private void RemoveAt(int place)
    {
        Count--;
        Array.Copy(_entries, place + 1, _entries, place, Count - place);
    }
}
