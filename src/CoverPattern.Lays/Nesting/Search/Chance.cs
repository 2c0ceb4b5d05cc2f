using System;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Seeded chance of the search: the same numbers for the same seed on every machine.</summary>
internal sealed class Chance
{
    private readonly SplitMix64 _numbers;

    /// <param name="seed">The user's seed.</param>
    /// <param name="stream">Number of the logical worker: each has a row of numbers of its own.</param>
    public Chance(int seed, int stream)
    {
        _numbers = new SplitMix64(unchecked((long)(((ulong)(uint)seed << 32) ^ ((ulong)(uint)stream * 0xD1342543DE82EF95UL))));
        _ = Next();
        _ = Next();
    }

    public ulong Next() => _numbers.Next();

    /// <summary>A whole number from 0 to <paramref name="limit"/> - 1; 0 for limits below 2.</summary>
    public int Below(int limit) => limit < 2 ? 0 : (int)Math.BigMul(Next() >> 32, (ulong)limit << 32, out _);

    /// <summary>A whole number between two bounds, both included; the low bound when they are out of order.</summary>
    public int Between(int low, int high) => high <= low ? low : low + Below(high - low + 1);

    /// <summary>A number of [0, 1).</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Puts the first <paramref name="count"/> entries into a chance order.</summary>
    public void Shuffle(int[] entries, int count)
    {
        for (var i = count - 1; i > 0; i--)
        {
            var j = Below(i + 1);
            (entries[i], entries[j]) = (entries[j], entries[i]);
        }
    }
}
