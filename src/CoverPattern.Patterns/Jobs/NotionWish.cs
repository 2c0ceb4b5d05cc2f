namespace CoverPattern.Patterns.Jobs;

/// <summary>How zips, bindings and tapes are sold and what their ends take.</summary>
/// <param name="ZipStep">Zips are sold in multiples of this length.</param>
/// <param name="ZipEnds">Tape of a zip beyond its seam, both ends together, with the stops.</param>
/// <param name="TapeStep">Bindings, webbing and tape are sold in multiples of this length.</param>
/// <param name="TapeEnds">Binding or webbing beyond what it is sewn to, both ends together.</param>
public sealed record NotionWish(Measure ZipStep, Measure ZipEnds, Measure TapeStep, Measure TapeEnds)
{
    /// <summary>100 and 50 mm for zips, 1 m and 50 mm for tapes: common practice, no source.</summary>
    public static NotionWish Usual { get; } = new(new Measure(100, "100 mm"), new Measure(50, "50 mm"), new Measure(1000, "1 m"), new Measure(50, "50 mm"));
}
