namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Weighs spots of one copy: the severities of the overlaps it would have, times the pairs' weights.</summary>
internal sealed class PlaceCost
{
    private readonly Strip _strip;
    private readonly PairTables _tables;
    private readonly int[] _found;
    private float[] _row = [];
    private int _copy = -1;

    public PlaceCost(Strip strip, PairTables tables)
    {
        (_strip, _tables) = (strip, tables);
        _found = new int[strip.Count];
    }

    public long Evaluations { get; private set; }

    public void Open(int copy, PairWeights weights) => (_copy, _row) = (copy, weights.OpenRow(copy));

    public void Close(PairWeights weights) => weights.CloseRow(_copy);

    /// <summary>Cost of a spot; any number from <paramref name="bound"/> up when it costs at least that.</summary>
    public double Of(in Spot spot, double bound)
    {
        Evaluations++;
        var sum = Among(spot, 0, bound);
        if (_strip.IsRound && sum < bound)
        {
            sum += Among(spot, -_strip.Length, bound - sum);
            sum = sum < bound ? sum + Among(spot, _strip.Length, bound - sum) : sum;
        }

        return sum;
    }

    /// <summary>Cost against the copies as they lie, all shifted along the strip.</summary>
    private double Among(in Spot spot, int shift, double bound)
    {
        var count = _strip.Collect(spot.Shape.Box.Moved(spot.X - shift, spot.Y), _found);
        var sum = 0.0;
        for (var k = 0; k < count; k++)
        {
            var other = _found[k];
            if (other == _copy)
            {
                continue;
            }

            var (x, y) = (_strip.X[other] + shift - spot.X, _strip.Y[other] - spot.Y);
            if (_tables.Overlap(spot.Shape, _strip.Shapes[other], x, y))
            {
                sum += _row[other] * Severity.Of(spot.Shape, _strip.Shapes[other], x, y);
                if (sum >= bound)
                {
                    return sum;
                }
            }
        }

        return sum;
    }
}
