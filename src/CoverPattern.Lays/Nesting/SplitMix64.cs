namespace CoverPattern.Lays.Nesting;

/// <summary>A small generator of even chance, the same on every machine [Steele Lea Flood 2014, from memory].</summary>
internal sealed class SplitMix64(long seed)
{
    private ulong state = unchecked((ulong)seed);

    /// <summary>A number from 0 to one below the limit.</summary>
    /// <param name="limit">1 or more; the unevenness of the remainder is below limit / 2^63.</param>
    public int Below(int limit) => (int)((Next() >> 1) % (ulong)limit);

    /// <summary>Sixty-four even bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }
}
