using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Weights of pairs that keep overlapping: they grow while a pair overlaps and fade back to 1 when it no longer does.</summary>
/// <remarks>
/// Guided local search [Umetani 2009], growth rule [Gardeyn 2025]. Only weights above 1 are held, so that cost and memory go
/// with the pairs that ever met, not with all.
/// </remarks>
internal sealed class PairWeights
{
    private const float LeastGrowth = 1.2f;
    private const float MostGrowth = 2.0f;
    private const float Fading = 0.85f;

    // Keeps a long struggle from running out of range; far above any weight that still decides something.
    private const float Largest = 1e12f;

    private readonly PairList _weights;
    private readonly float[] _row;
    private readonly float[] _severities;

    public PairWeights(int copies)
    {
        _weights = new PairList(copies);
        (_row, _severities) = (new float[copies], new float[copies]);
        Array.Fill(_row, 1);
    }

    /// <summary>Spreads one copy's weights over a row with a place for every copy; to be closed before the next is opened.</summary>
    public float[] OpenRow(int copy)
    {
        var others = _weights.Others(copy);
        var values = _weights.Values(copy);
        for (var k = 0; k < others.Length; k++)
        {
            _row[others[k]] = values[k];
        }

        return _row;
    }

    public void CloseRow(int copy)
    {
        foreach (var other in _weights.Others(copy))
        {
            _row[other] = 1;
        }
    }

    public void Reset() => _weights.Clear();

    /// <summary>Grows and fades all weights once, after a sweep.</summary>
    public void Update(PairList overlaps)
    {
        var worst = 0f;
        for (var i = 0; i < overlaps.Copies; i++)
        {
            foreach (var value in overlaps.Values(i))
            {
                worst = Math.Max(worst, value);
            }
        }

        for (var i = 0; i < overlaps.Copies; i++)
        {
            UpdateOf(i, overlaps, worst);
        }
    }

    private void UpdateOf(int copy, PairList overlaps, float worst)
    {
        var others = overlaps.Others(copy);
        var values = overlaps.Values(copy);
        for (var k = 0; k < others.Length; k++)
        {
            _severities[others[k]] = values[k];
        }

        for (var k = _weights.Others(copy).Length - 1; k >= 0; k--)
        {
            var other = _weights.Others(copy)[k];
            ref var weight = ref _weights.Values(copy)[k];
            var severity = _severities[other];
            _severities[other] = 0;
            weight = severity > 0 ? Grown(weight, severity, worst) : weight * Fading;
            if (weight <= 1)
            {
                _weights.RemoveAt(copy, k);
            }
        }

        foreach (var other in others)
        {
            if (_severities[other] > 0)
            {
                _weights.Add(copy, other, Grown(1, _severities[other], worst));
                _severities[other] = 0;
            }
        }
    }

    private static float Grown(float weight, float severity, float worst) =>
        Math.Min(Largest, weight * (LeastGrowth + ((MostGrowth - LeastGrowth) * severity / worst)));
}
