using System;
using System.Collections.Immutable;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Finds a better place for one copy while all others stay: samples, keeps a few, refines them.</summary>
internal sealed class PlaceSearch
{
    private const int ManyTurns = 8;
    private const double TurnParts = 1024;

    private readonly SearchScene _scene;
    private readonly Strip _strip;
    private readonly PairWeights _weights;
    private readonly SearchSettings _settings;
    private readonly ImmutableArray<ImmutableArray<PreparedShape>> _shapes;
    private readonly Chance _chance;
    private readonly PlaceCost _cost;
    private readonly Shortlist _kept;
    private readonly ContactSteps _contacts;
    private readonly ImmutableArray<(int First, int Count)> _copiesOf;
    private int _copy;

    public PlaceSearch(SearchScene scene, Strip strip, PairWeights weights, Chance chance)
    {
        (_scene, _strip, _weights, _settings, _shapes, _chance) = (scene, strip, weights, scene.Settings, scene.Shapes, chance);
        _cost = new PlaceCost(strip, scene.Tables);
        _kept = new Shortlist(scene.Settings.Refined);
        _contacts = new ContactSteps(strip, scene.Tables);
        _copiesOf = scene.CopiesOf;
    }

    /// <summary>Evaluations done since the start.</summary>
    public long Evaluations => _cost.Evaluations;

    /// <summary>Looks for the cheapest place of a copy.</summary>
    /// <returns>The place found, or where the copy lies when none is cheaper.</returns>
    public Spot Find(int copy)
    {
        _cost.Open(copy, _weights);
        _copy = copy;
        var here = _strip.At(copy);
        var hereCost = _cost.Of(here, double.PositiveInfinity);
        var best = Search(here, hereCost);
        _cost.Close(_weights);
        return best;
    }

    private Spot Search(in Spot here, double hereCost)
    {
        _kept.Clear();
        _kept.Offer(here, hereCost);
        Sample(here);
        var (best, bestCost) = (here, hereCost);
        for (var k = 0; k < _kept.Count && bestCost > 0; k++)
        {
            var (spot, cost) = _kept[k];
            Refine(ref spot, ref cost, _settings.FirstStep, _settings.CoarseStop);
            if (cost < bestCost)
            {
                (best, bestCost) = (spot, cost);
            }
        }

        if (bestCost > 0)
        {
            Refine(ref best, ref bestCost, 2 * _settings.CoarseStop, _settings.FineStop);
            Touch(ref best, ref bestCost);
        }

        if (bestCost > 0 && _scene.MayTurn(here.Shape) && _chance.Below(_settings.TurnEvery) == 0)
        {
            Turn(ref best, ref bestCost);
        }

        return best;
    }

    private void Sample(in Spot here)
    {
        var turns = _shapes[here.Shape.Item];
        for (var k = 0; k < _settings.LeaningSamples && _kept.Bound > 0; k++)
        {
            TryLeaning(Turned(turns));
        }

        for (var k = 0; k < _settings.WideSamples && _kept.Bound > 0; k++)
        {
            var shape = Turned(turns);
            var x = _chance.Between(-shape.TrueBox.Left, _strip.LastX(shape));
            var y = _chance.Between(-shape.TrueBox.Bottom, _strip.Width - shape.TrueBox.Top);
            Try(shape, x, y);
        }

        var reach = (int)(_settings.NearReach * here.Shape.Diameter);
        var (midX, midY) = (here.X + Middle(here.Shape.Box.Left, here.Shape.Box.Right), here.Y + Middle(here.Shape.Box.Bottom, here.Shape.Box.Top));
        for (var k = 0; k < _settings.NearSamples && _kept.Bound > 0; k++)
        {
            var shape = Turned(turns);
            var x = midX - Middle(shape.Box.Left, shape.Box.Right) + _chance.Between(-reach, reach);
            var y = midY - Middle(shape.Box.Bottom, shape.Box.Top) + _chance.Between(-reach, reach);
            Try(shape, x, y);
        }
    }

    /// <summary>Tries a place at which the shape leans against a chance copy.</summary>
    private void TryLeaning(PreparedShape shape)
    {
        var other = _chance.Below(_strip.Count);
        var there = _strip.At(other);
        if (other != _copy && PairTables.AreHazards(shape, there.Shape))
        {
            var (x, y) = Leaning.Draw(shape, there.Shape, _chance);
            Try(shape, there.X + x, there.Y + y);
        }
    }

    /// <summary>
    /// A shape in a turn to be tried. Where the turns are many, every other one is that of some copy as it lies now: turns
    /// that fit together spread instead of drowning among all others.
    /// </summary>
    private PreparedShape Turned(ImmutableArray<PreparedShape> turns)
    {
        if (turns.Length <= ManyTurns || _chance.Below(2) == 0)
        {
            return turns[_chance.Below(turns.Length)];
        }

        var (first, count) = _copiesOf[turns[0].Item];
        return _strip.Shapes[first + _chance.Below(count)];
    }

    private static int Middle(int low, int high) => low + ((high - low) / 2);

    private void Try(PreparedShape shape, int x, int y)
    {
        if (!_strip.Fits(shape))
        {
            return;
        }

        var spot = _strip.Kept(shape, x, y);
        var cost = _cost.Of(spot, _kept.Bound);
        if (cost < _kept.Bound)
        {
            _kept.Offer(spot, cost);
        }
    }

    /// <summary>Steps along x, y or a diagonal in chance order, longer after a gain, half as long after none.</summary>
    private void Refine(ref Spot spot, ref double cost, double first, double stop)
    {
        var last = Math.Max(1, stop * spot.Shape.Diameter);
        _cost.Stay(spot, (int)(2 * first * spot.Shape.Diameter) + 1);
        var (stepX, stepY) = (first * spot.Shape.Diameter, first * spot.Shape.Diameter);
        while ((stepX >= last || stepY >= last) && cost > 0)
        {
            var way = _chance.Below(4);
            var sign = _chance.Below(2) == 0 ? 1 : -1;
            var dx = way == 1 ? 0 : sign * (int)stepX;
            var dy = way == 0 ? 0 : (way == 3 ? -sign : sign) * (int)stepY;
            var gained = Step(ref spot, ref cost, dx, dy) || Step(ref spot, ref cost, -dx, -dy);
            if (dx != 0)
            {
                stepX *= gained ? 1.1 : way < 2 ? 0.5 : 0.7071;
            }

            if (dy != 0)
            {
                stepY *= gained ? 1.1 : way < 2 ? 0.5 : 0.7071;
            }
        }
    }

    /// <summary>Tries the steps that end in an exact contact, along x and y in turn, while they gain.</summary>
    private void Touch(ref Spot spot, ref double cost)
    {
        var reach = (int)(_settings.ContactReach * spot.Shape.Diameter);
        for (int turn = 0, idle = 0; turn < 4 && idle < 2 && cost > 0 && reach > 0; turn++)
        {
            var (from, gained, alongX) = (spot, false, turn % 2 == 0);
            var steps = _contacts.Gather(_copy, from, alongX, reach);
            foreach (var step in steps[..Math.Min(steps.Length, _settings.ContactTries)])
            {
                var next = _strip.Kept(from.Shape, from.X + (alongX ? step : 0), from.Y + (alongX ? 0 : step));
                var nextCost = _cost.Of(next, cost);
                if (nextCost < cost)
                {
                    (spot, cost, gained) = (next, nextCost, true);
                }
            }

            idle = gained ? 0 : idle + 1;
        }
    }

    /// <summary>Turns about the largest circle by ever smaller steps, as long as that gains.</summary>
    private void Turn(ref Spot spot, ref double cost)
    {
        for (var step = _settings.FirstTurn; step >= _settings.LastTurn && cost > 0; step /= 2)
        {
            var sign = _chance.Below(2) == 0 ? 1 : -1;
            if (!TurnBy(ref spot, ref cost, sign * step))
            {
                TurnBy(ref spot, ref cost, -sign * step);
            }
        }
    }

    private bool TurnBy(ref Spot spot, ref double cost, double degrees)
    {
        // Turns are whole parts of 1,024, so that they are written and read back as they are.
        var turn = TurnChoices.Normal(Math.Round((spot.Shape.TurnDegrees + degrees) * TurnParts) / TurnParts);
        if (_scene.Turned(spot.Shape, turn) is not { } shape || !_strip.Fits(shape))
        {
            return false;
        }

        var next = _strip.Kept(shape, spot.X + (int)(spot.Shape.PoleX[0] - shape.PoleX[0]), spot.Y + (int)(spot.Shape.PoleY[0] - shape.PoleY[0]));
        var nextCost = _cost.Of(next, double.PositiveInfinity);
        Refine(ref next, ref nextCost, 2 * _settings.CoarseStop, _settings.FineStop);
        if (nextCost >= cost)
        {
            return false;
        }

        (spot, cost) = (next, nextCost);
        return true;
    }

    private bool Step(ref Spot spot, ref double cost, int dx, int dy)
    {
        var next = _strip.Kept(spot.Shape, spot.X + dx, spot.Y + dy);
        if (next.X == spot.X && next.Y == spot.Y)
        {
            return false;
        }

        var nextCost = _cost.Of(next, cost);
        if (nextCost >= cost)
        {
            return false;
        }

        (spot, cost) = (next, nextCost);
        return true;
    }
}
