namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Weighs spots of one copy: the severities of the overlaps it would have, times the pairs' weights.</summary>
internal sealed class PlaceCost
{
    private readonly Neighbours _near;
    private readonly Neighbours _here;
    private float[] _row = [];
    private int _copy = -1;

    public PlaceCost(Strip strip, PairTables tables) => (_near, _here) = (new Neighbours(strip, tables), new Neighbours(strip, tables));

    public long Evaluations { get; private set; }

    public void Open(int copy, PairWeights weights)
    {
        (_copy, _row) = (copy, weights.OpenRow(copy));
        _near.Clear();
    }

    public void Close(PairWeights weights) => weights.CloseRow(_copy);

    /// <summary>Makes ready for many questions within some steps of a spot.</summary>
    public void Stay(in Spot spot, int reach) => _near.Gather(spot, reach, _copy, _row);

    /// <summary>Cost of a spot; any number from <paramref name="bound"/> up when it costs at least that.</summary>
    public double Of(in Spot spot, double bound)
    {
        Evaluations++;
        if (_near.Serve(spot))
        {
            return _near.Cost(spot.X, spot.Y, bound);
        }

        _here.Gather(spot, 0, _copy, _row);
        return _here.Cost(spot.X, spot.Y, bound);
    }
}
