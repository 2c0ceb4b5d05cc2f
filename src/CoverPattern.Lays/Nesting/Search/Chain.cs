using System;
using System.Threading;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>One worker's line of search: shorten, untangle, shake up when stuck, press at the end. Runs in slices.</summary>
internal sealed class Chain
{
    // A sweep that weighs no place, because nothing is tangled or nothing can move, counts as this many: the search ends all the same.
    private const int IdleSweep = 100;

    private readonly SearchScene _scene;
    private readonly Strip _strip;
    private readonly Chance _chance;
    private readonly Untangler _untangler;
    private readonly Failures _failures = new();
    private readonly double _shortening;
    private bool _pressing;
    private double _pressRate;

    /// <param name="scene">What is laid.</param>
    /// <param name="start">The lay to begin with.</param>
    /// <param name="shortening">Part of the length to take off at each success until pressing begins.</param>
    /// <param name="chance">The chain's own chance.</param>
    public Chain(SearchScene scene, FoundLay start, double shortening, Chance chance)
    {
        (_scene, _chance, _shortening, Best) = (scene, chance, shortening, start);
        _strip = new Strip(scene);
        _untangler = new Untangler(scene, _strip, chance);
        Restart();
    }

    /// <summary>The shortest lay this chain knows.</summary>
    public FoundLay Best { get; private set; }

    public long Evaluations => _untangler.Evaluations;

    /// <summary>Whether the strip cannot become shorter.</summary>
    public bool IsDone { get; private set; }

    /// <summary>Takes over another chain's lay when this one strives for a length that is reached already.</summary>
    public void Hear(FoundLay other)
    {
        if (other.Length < Best.Length && other.Length <= _strip.Length)
        {
            Best = other;
            Restart();
        }
    }

    /// <summary>Goes over to pressing the best lay.</summary>
    /// <param name="rate">Part of the length to take off at each success.</param>
    /// <param name="best">The best lay of all chains.</param>
    public void Press(double rate, FoundLay best)
    {
        _pressRate = rate;
        if (_pressing)
        {
            return;
        }

        (_pressing, Best) = (true, best);
        Restart();
    }

    /// <summary>Searches until the given number of evaluations is done or the work is cancelled.</summary>
    public void Run(long evaluations, CancellationToken cancel)
    {
        var spent = 0L;
        while (!IsDone && spent < evaluations && !cancel.IsCancellationRequested)
        {
            var before = Evaluations;
            switch (_untangler.Sweep())
            {
                case Outcome.Solved:
                    Best = new FoundLay(_strip.UsedLength(), _strip.Copy());
                    Restart();
                    break;
                case Outcome.GivenUp:
                    GiveUp();
                    break;
                default:
                    break;
            }

            spent += Math.Max(Evaluations - before, IdleSweep);
        }
    }

    /// <summary>Begins at the best lay, made a little shorter.</summary>
    private void Restart()
    {
        var rate = _pressing ? _pressRate : _shortening;
        // The last cut goes to the very bound: a jigsaw is solved there and nowhere else.
        var target = Math.Max(_scene.ShortestLength, Best.Length - Math.Max(1, (int)(rate * Best.Length)));
        _failures.Clear();
        _strip.Take(Best.Spots);
        if (target >= Best.Length)
        {
            IsDone = true;
            return;
        }

        Shaking.Shorten(_strip, _scene, (Best.Length, target), _chance);
        Begin();
    }

    private void GiveUp()
    {
        if (_pressing)
        {
            Restart();
            return;
        }

        _failures.Add(_untangler.BestTotal, _strip.Copy());
        _strip.Take(_failures.Draw(_chance));
        Shaking.SwapTwo(_strip, _scene, _chance);
        Begin();
    }

    private void Begin() => _untangler.Begin(
        _pressing ? _scene.Settings.PressPatience : _scene.Settings.Patience,
        _pressing ? _scene.Settings.PressStrikes : _scene.Settings.Strikes);
}
