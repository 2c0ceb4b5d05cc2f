using System;
using System.Numerics;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Copies sorted into bins by their left end, so that a question about a place looks at its neighbourhood only.</summary>
/// <remarks>Bins are at least as wide as the widest box. Far bins may share a list: that costs time, not rightness.</remarks>
internal sealed class StripBins
{
    private readonly int _widest;
    private readonly int _shift;
    private readonly int _mask;
    private readonly int[][] _members;
    private readonly int[] _counts;
    private readonly int[] _binOf;
    private readonly int[] _placeIn;

    /// <param name="copies">Number of copies.</param>
    /// <param name="widest">Width of the widest box, steps.</param>
    public StripBins(int copies, int widest)
    {
        var bins = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(16, copies / 4));
        (_widest, _mask) = (widest, bins - 1);
        _shift = BitOperations.Log2(BitOperations.RoundUpToPowerOf2((uint)Math.Max(2, widest)));
        (_members, _counts) = (new int[bins][], new int[bins]);
        (_binOf, _placeIn) = (new int[copies], new int[copies]);
        Array.Fill(_binOf, -1);
        for (var k = 0; k < bins; k++)
        {
            _members[k] = new int[8];
        }
    }

    public void Put(int copy, int left)
    {
        var bin = (left >> _shift) & _mask;
        if (bin == _binOf[copy])
        {
            return;
        }

        if (_binOf[copy] >= 0)
        {
            TakeOut(copy);
        }

        if (_counts[bin] == _members[bin].Length)
        {
            Array.Resize(ref _members[bin], 2 * _counts[bin]);
        }

        (_binOf[copy], _placeIn[copy]) = (bin, _counts[bin]);
        _members[bin][_counts[bin]++] = copy;
    }

    /// <summary>Number of bins that may hold a box meeting the given range, and the first of them.</summary>
    public (int First, int Count) Reaching(int left, int right)
    {
        var first = (left - _widest) >> _shift;
        return (first, Math.Min(((right - 1) >> _shift) - first + 1, _mask + 1));
    }

    public ReadOnlySpan<int> Members(int bin) => _members[bin & _mask].AsSpan(0, _counts[bin & _mask]);

    private void TakeOut(int copy)
    {
        var (bin, place) = (_binOf[copy], _placeIn[copy]);
        var last = _members[bin][--_counts[bin]];
        _members[bin][place] = last;
        _placeIn[last] = place;
    }
}
