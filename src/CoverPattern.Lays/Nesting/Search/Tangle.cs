using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The overlaps of a strip at the moment: which pairs, and how bad each is. Kept up to date move by move.</summary>
internal sealed class Tangle
{
    private readonly Strip _strip;
    private readonly PairTables _tables;
    private readonly int[] _found;

    public Tangle(Strip strip, PairTables tables)
    {
        (_strip, _tables) = (strip, tables);
        _found = new int[strip.Count];
        Pairs = new PairList(strip.Count);
    }

    /// <summary>For each copy the copies it overlaps, with severities; each pair stands in both lists.</summary>
    public PairList Pairs { get; }

    public bool IsTangled(int copy) => Pairs.Others(copy).Length > 0;

    /// <summary>Sum of all severities; 0 exactly when nothing overlaps.</summary>
    public double Total()
    {
        var sum = 0.0;
        for (var i = 0; i < Pairs.Copies; i++)
        {
            foreach (var value in Pairs.Values(i))
            {
                sum += value;
            }
        }

        return sum / 2;
    }

    /// <summary>Finds all overlaps anew.</summary>
    public void Rebuild()
    {
        Pairs.Clear();
        for (var i = 0; i < _strip.Count; i++)
        {
            AddPairs(i, below: i);
        }
    }

    /// <summary>Lays a copy elsewhere and brings its pairs up to date.</summary>
    public void Move(int copy, in Spot spot)
    {
        foreach (var other in Pairs.Others(copy))
        {
            Pairs.Remove(other, copy);
        }

        Pairs.Clear(copy);
        _strip.Place(copy, spot);
        AddPairs(copy, below: _strip.Count);
    }

    private void AddPairs(int copy, int below)
    {
        var spot = _strip.At(copy);
        foreach (var shift in _strip.Repeats(stackalloc int[3]))
        {
            var count = _strip.Collect(spot.Shape.Box.Moved(spot.X - shift, spot.Y), _found);
            for (var k = 0; k < count; k++)
            {
                var other = _found[k];
                if (other == copy || other >= below)
                {
                    continue;
                }

                var (x, y) = (_strip.X[other] + shift - spot.X, _strip.Y[other] - spot.Y);
                if (_tables.Overlap(spot.Shape, _strip.Shapes[other], x, y))
                {
                    var severity = Severity.Of(spot.Shape, _strip.Shapes[other], x, y);
                    Note(copy, other, severity);
                    Note(other, copy, severity);
                }
            }
        }
    }

    /// <summary>On a round strip two copies may overlap on both ways round: one entry holds both.</summary>
    private void Note(int copy, int other, float severity)
    {
        var place = _strip.IsRound ? Pairs.Others(copy).IndexOf(other) : -1;
        if (place >= 0)
        {
            Pairs.Values(copy)[place] += severity;
        }
        else
        {
            Pairs.Add(copy, other, severity);
        }
    }
}
