using System;
using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Moves overlapping copies, one by one and sweep by sweep, until nothing overlaps or patience is used up.</summary>
/// <remarks>Guided local search over pair weights with strikes [Gardeyn 2025].</remarks>
internal sealed class Untangler
{
    private readonly Strip _strip;
    private readonly Chance _chance;
    private readonly PlaceSearch _places;
    private readonly int[] _order;
    private readonly double _gainFactor;
    private readonly ImmutableArray<bool> _locked;
    private ImmutableArray<Spot> _best = [];
    private int _patience;
    private int _strikesLeft;
    private int _strikes;
    private int _withoutGain;
    private bool _gained;

    public Untangler(SearchScene scene, Strip strip, Chance chance)
    {
        (_strip, _chance, _gainFactor, _locked) = (strip, chance, 1 - scene.Settings.LeastGain, scene.Locked);
        Weights = new PairWeights(strip.Count);
        Tangle = new Tangle(strip, scene.Tables);
        _places = new PlaceSearch(scene, strip, Weights, chance);
        _order = new int[strip.Count];
    }

    public long Evaluations => _places.Evaluations;

    public PairWeights Weights { get; }

    public Tangle Tangle { get; }

    /// <summary>Sum of severities of the best state of this struggle.</summary>
    public double BestTotal { get; private set; }

    /// <summary>Begins a struggle from the strip as it lies.</summary>
    public void Begin(int patience, int strikes)
    {
        (_patience, _strikes, _strikesLeft, _withoutGain, _gained) = (patience, strikes, strikes, 0, false);
        Tangle.Rebuild();
        Remember(Tangle.Total());
    }

    /// <summary>Gives every overlapping copy one chance to move.</summary>
    public Outcome Sweep()
    {
        MoveTangled();
        var total = Tangle.Total();
        if (total <= 0)
        {
            return Outcome.Solved;
        }

        Weights.Update(Tangle.Pairs);
        if (total < _gainFactor * BestTotal)
        {
            (_withoutGain, _gained) = (0, true);
            Remember(total);
            return Outcome.Going;
        }

        return ++_withoutGain < _patience ? Outcome.Going : EndAttempt();
    }

    private void Remember(double total) => (BestTotal, _best) = (total, _strip.Copy());

    private void MoveTangled()
    {
        var count = 0;
        for (var i = 0; i < _strip.Count; i++)
        {
            if (Tangle.IsTangled(i) && !_locked[i])
            {
                _order[count++] = i;
            }
        }

        _chance.Shuffle(_order, count);
        foreach (var copy in _order.AsSpan(0, count))
        {
            if (!Tangle.IsTangled(copy))
            {
                continue;
            }

            var spot = _places.Find(copy);
            if (spot != _strip.At(copy))
            {
                Tangle.Move(copy, spot);
            }
        }
    }

    /// <summary>Goes back to the best state; the weights stay, so that the next attempt takes another way.</summary>
    private Outcome EndAttempt()
    {
        _strikesLeft = _gained ? _strikes : _strikesLeft - 1;
        (_withoutGain, _gained) = (0, false);
        _strip.Take(_best);
        Tangle.Rebuild();
        return _strikesLeft > 0 ? Outcome.Going : Outcome.GivenUp;
    }
}
