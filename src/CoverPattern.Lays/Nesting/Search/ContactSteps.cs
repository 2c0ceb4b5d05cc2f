using System;
using System.Collections.Generic;
using System.Runtime.InteropServices;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Finds the short steps along one axis after which a copy exactly touches a neighbour.</summary>
/// <remarks>
/// Sampling alone never hits a contact, and where pieces fit exactly only contacts will do. Exact best shifts along one axis:
/// idea [Egeblad 2007]; here only contacts near the present place are looked at.
/// </remarks>
internal sealed class ContactSteps
{
    private const int Most = 64;

    private readonly Strip _strip;
    private readonly int[] _found;
    private readonly int[] _steps = new int[Most];
    private readonly PairTables _tables;
    private readonly List<Touching> _pieces = [];

    public ContactSteps(Strip strip, PairTables tables)
    {
        (_strip, _tables) = (strip, tables);
        _found = new int[strip.Count];
    }

    /// <summary>Lists the steps, shortest first.</summary>
    /// <param name="copy">The copy; its own present place is no obstacle.</param>
    /// <param name="spot">Where it is tried.</param>
    /// <param name="alongX">Axis of the steps.</param>
    /// <param name="reach">Longest step, steps of the grid.</param>
    public ReadOnlySpan<int> Gather(int copy, in Spot spot, bool alongX, int reach)
    {
        var box = spot.Shape.Box.Moved(spot.X, spot.Y);
        var wide = alongX
            ? box with { Left = box.Left - reach, Right = box.Right + reach }
            : box with { Bottom = box.Bottom - reach, Top = box.Top + reach };
        var count = 0;
        foreach (var shift in _strip.Repeats(stackalloc int[3]))
        {
            var near = _strip.Collect(wide.Moved(-shift, 0), _found);
            for (var k = 0; k < near; k++)
            {
                var other = _found[k];
                if (other != copy)
                {
                    double x = _strip.X[other] + shift - spot.X, y = _strip.Y[other] - spot.Y;
                    Sweep(spot.Shape, _strip.Shapes[other], (x, y), alongX, reach, ref count);
                }
            }
        }

        return _steps.AsSpan(0, count);
    }

    /// <summary>Looks where the other shape, seen from the moved one, meets the shifts at which they touch.</summary>
    private void Sweep(PreparedShape moved, PreparedShape other, (double X, double Y) shift, bool alongX, int reach, ref int count)
    {
        // The charts are of the shape of the lower index first. Without a chart the pieces are made for the occasion, in the same way.
        var isFirst = moved.Index <= other.Index;
        var (x, y) = isFirst ? shift : (-shift.X, -shift.Y);
        var sign = isFirst ? 1 : -1;
        var (height, place) = alongX ? (y, x) : (x, y);
        foreach (var piece in Pieces(isFirst ? moved : other, isFirst ? other : moved))
        {
            var (from, to) = alongX ? (piece.Y, piece.ToY) : (piece.X, piece.ToX);
            if (from == to || height < Math.Min(from, to) || height > Math.Max(from, to))
            {
                continue;
            }

            var (start, end) = alongX ? (piece.X, piece.ToX) : (piece.Y, piece.ToY);
            var step = sign * (place - (start + ((height - from) / (to - from) * (end - start))));
            if (Math.Abs(step) <= reach)
            {
                Add((int)Math.Floor(step), ref count);
                Add((int)Math.Ceiling(step), ref count);
            }
        }
    }

    private ReadOnlySpan<Touching> Pieces(PreparedShape first, PreparedShape second)
    {
        if (_tables.TableFor(first, second) is var table && table != PairTable.None)
        {
            return table.Touching;
        }

        _pieces.Clear();
        Touching.Collect(first, second, _pieces);
        return CollectionsMarshal.AsSpan(_pieces);
    }

    /// <summary>Puts a step into the list by its size; steps that are there or none are passed over.</summary>
    private void Add(int step, ref int count)
    {
        if (step == 0 || _steps.AsSpan(0, count).Contains(step) || (count == Most && Math.Abs(_steps[count - 1]) <= Math.Abs(step)))
        {
            return;
        }

        var place = count < Most ? count++ : count - 1;
        for (; place > 0 && Math.Abs(_steps[place - 1]) > Math.Abs(step); place--)
        {
            _steps[place] = _steps[place - 1];
        }

        _steps[place] = step;
    }
}
