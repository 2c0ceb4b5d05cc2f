using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>For every copy a short list of other copies with a number each; what is not listed has the number's rest value.</summary>
internal sealed class PairList
{
    private readonly int[][] _others;
    private readonly float[][] _values;
    private readonly int[] _counts;

    public PairList(int copies)
    {
        (_others, _values, _counts) = (new int[copies][], new float[copies][], new int[copies]);
        for (var i = 0; i < copies; i++)
        {
            (_others[i], _values[i]) = (new int[16], new float[16]);
        }
    }

    public int Copies => _counts.Length;

    public ReadOnlySpan<int> Others(int copy) => _others[copy].AsSpan(0, _counts[copy]);

    public Span<float> Values(int copy) => _values[copy].AsSpan(0, _counts[copy]);

    public void Add(int copy, int other, float value)
    {
        var count = _counts[copy];
        if (count == _others[copy].Length)
        {
            Array.Resize(ref _others[copy], 2 * count);
            Array.Resize(ref _values[copy], 2 * count);
        }

        (_others[copy][count], _values[copy][count]) = (other, value);
        _counts[copy]++;
    }

    /// <summary>Takes an entry out; the last one moves into its place.</summary>
    public void RemoveAt(int copy, int place)
    {
        var last = --_counts[copy];
        (_others[copy][place], _values[copy][place]) = (_others[copy][last], _values[copy][last]);
    }

    public void Remove(int copy, int other) => RemoveAt(copy, Array.IndexOf(_others[copy], other, 0, _counts[copy]));

    public void Clear(int copy) => _counts[copy] = 0;

    public void Clear() => Array.Clear(_counts);
}
