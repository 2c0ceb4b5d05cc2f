using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>The copies that one copy can meet at a place or near it, with all that weighing needs lying side by side.</summary>
/// <remarks>Refining weighs a hundred spots within a few per cent of a diameter: who can be met there is asked once.</remarks>
internal sealed class Neighbours
{
    // Beyond a bound by this factor a sum is beyond it in whatever order it is added.
    private const double Surely = 1 + 1e-9;

    private readonly Strip _strip;
    private readonly PairTables _tables;
    private readonly int[] _found;
    private readonly Entry[] _entries;
    private readonly int[] _sure;
    private readonly int[] _unsure;
    private readonly byte[] _codes;
    private readonly double[] _parts;
    private int _count;
    private PreparedShape? _shape;
    private StepBox _origins;

    public Neighbours(Strip strip, PairTables tables)
    {
        // On a round strip a copy may be met on either way round.
        var most = strip.IsRound ? 3 * strip.Count : strip.Count;
        (_strip, _tables, _found, _entries) = (strip, tables, new int[strip.Count], new Entry[most]);
        (_sure, _unsure, _codes, _parts) = (new int[most], new int[most], new byte[most], new double[most]);
    }

    /// <param name="Shape">The other copy's shape.</param>
    /// <param name="Table">The chart of both shapes; <see cref="PairTable.None"/> while there is none.</param>
    /// <param name="Sign">+1 when the chart is seen from the moved shape, -1 when from the other.</param>
    /// <param name="Weight">Weight of the pair.</param>
    /// <param name="X">Where the other copy lies, steps.</param>
    /// <param name="Y">Where the other copy lies, steps.</param>
    private readonly record struct Entry(PreparedShape Shape, PairTable Table, int Sign, float Weight, int X, int Y);

    /// <summary>Forgets all: another copy is to be laid, or one has moved.</summary>
    public void Clear() => _shape = null;

    /// <summary>Whether the gathered copies are all that a spot can meet.</summary>
    public bool Serve(in Spot spot) =>
        spot.Shape == _shape && spot.X >= _origins.Left && spot.X <= _origins.Right && spot.Y >= _origins.Bottom && spot.Y <= _origins.Top;

    /// <summary>Gathers the copies that can be met within some steps of a spot.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="reach">How far from it, steps.</param>
    /// <param name="copy">The copy that is to be laid there.</param>
    /// <param name="weights">Weights of its pairs, by the other copy.</param>
    public void Gather(in Spot spot, int reach, int copy, float[] weights)
    {
        (_shape, _count) = (spot.Shape, 0);
        _origins = new StepBox(spot.X - reach, spot.Y - reach, spot.X + reach, spot.Y + reach);
        var box = spot.Shape.Box;
        var wide = new StepBox(box.Left + _origins.Left, box.Bottom + _origins.Bottom, box.Right + _origins.Right, box.Top + _origins.Top);
        foreach (var shift in _strip.Repeats(stackalloc int[3]))
        {
            var found = _strip.Collect(wide.Moved(-shift, 0), _found);
            foreach (var other in _found.AsSpan(0, found))
            {
                var shape = _strip.Shapes[other];
                if (other != copy && PairTables.AreHazards(spot.Shape, shape))
                {
                    var sign = spot.Shape.Index <= shape.Index ? 1 : -1;
                    _entries[_count++] = new Entry(shape, _tables.TableFor(spot.Shape, shape), sign, weights[other], _strip.X[other] + shift, _strip.Y[other]);
                }
            }
        }
    }

    /// <summary>Cost of a spot that is served: the severities of its overlaps, times the pairs' weights; without end when that is surely beyond the bound.</summary>
    /// <remarks>
    /// What the charts know comes first: most spots cost too much by that alone, and neither severities nor exact answers are needed. The charts
    /// are made at chance moments, so the parts are added in one order whatever they know, and a spot is given up only when it surely costs too much.
    /// </remarks>
    public double Cost(int x, int y, double bound)
    {
        var codes = _codes.AsSpan(0, _count);
        var entries = _entries.AsSpan(0, _count);
        for (var k = 0; k < codes.Length; k++)
        {
            ref readonly var entry = ref entries[k];
            codes[k] = entry.Table.Look(entry.Sign * (entry.X - x), entry.Sign * (entry.Y - y));
        }

        var (sure, unsure, least, limit) = (0, 0, 0.0, bound * Surely);
        for (var k = 0; k < codes.Length; k++)
        {
            var code = codes[k];
            _parts[k] = entries[k].Weight * entries[k].Table.Least(code);
            least += _parts[k];
            _sure[sure] = k;
            _unsure[unsure] = k;
            sure += code > PairTable.Unsure ? 1 : 0;
            unsure += code == PairTable.Unsure ? 1 : 0;
            if (least > limit)
            {
                return double.PositiveInfinity;
            }
        }

        foreach (var k in _sure.AsSpan(0, sure))
        {
            least += Weigh(k, x, y, limit - (least - _parts[k]));
            if (least > limit)
            {
                return double.PositiveInfinity;
            }
        }

        foreach (var k in _unsure.AsSpan(0, unsure))
        {
            if (Overlap.Exists(_shape!, _entries[k].Shape, _entries[k].X - x, _entries[k].Y - y))
            {
                least += Weigh(k, x, y, limit - least);
                if (least > limit)
                {
                    return double.PositiveInfinity;
                }
            }
        }

        return Sum();
    }

    /// <summary>Puts the exact part of an overlap in the place of what was known of it.</summary>
    /// <returns>By how much it is more.</returns>
    private double Weigh(int k, int x, int y, double enough)
    {
        ref readonly var entry = ref _entries[k];
        var known = _parts[k];
        _parts[k] = entry.Weight * Severity.Of(_shape!, entry.Shape, entry.X - x, entry.Y - y, (float)(enough / entry.Weight));
        return _parts[k] - known;
    }

    private double Sum()
    {
        var sum = 0.0;
        foreach (var part in _parts.AsSpan(0, _count))
        {
            sum += part;
        }

        return sum;
    }
}
