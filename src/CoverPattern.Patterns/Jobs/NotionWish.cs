namespace CoverPattern.Patterns.Jobs;

/// <summary>How zips, bindings and tapes are sold and what their ends take.</summary>
/// <param name="ZipStep">Zips are sold in multiples of this length.</param>
/// <param name="ZipEnds">Tape of a zip beyond its seam, both ends together, with the stops.</param>
/// <param name="TapeStep">Bindings, webbing and tape are sold in multiples of this length.</param>
/// <param name="TapeEnds">Binding or webbing beyond what it is sewn to, both ends together.</param>
public sealed record NotionWish(Measure ZipStep, Measure ZipEnds, Measure TapeStep, Measure TapeEnds)
{
    // A length that is a multiple but for rounding is not rounded up to the next one, millimetres: the grid and double arithmetic.
    private const double Rounding = 0.01;

    /// <summary>Length at which a zip is bought: with its ends, rounded up to what is sold, millimetres.</summary>
    /// <param name="sewn">Sewn length, millimetres.</param>
    public double SoldZipMm(double sewn) => ZipStep.Millimetres * System.Math.Ceiling((sewn + ZipEnds.Millimetres - Rounding) / ZipStep.Millimetres);

    /// <summary>100 and 50 mm for zips, 1 m and 50 mm for tapes: common practice, no source.</summary>
    public static NotionWish Usual { get; } = new(new Measure(100, "100 mm"), new Measure(50, "50 mm"), new Measure(1000, "1 m"), new Measure(50, "50 mm"));

    /// <summary>The shop's name for the zips of openings.</summary>
    public string ZipType { get; init; } = "No. 10 coil";

    /// <summary>Smallest radius of a curve on which such a zip runs.</summary>
    public Measure ZipRadius { get; init; } = new(150, "150 mm");

    /// <summary>Longest such zip.</summary>
    public Measure ZipLongest { get; init; } = new(4000, "4 m");

    /// <summary>Width of its chain: bound edges end at half of it from the middle of the teeth.</summary>
    public Measure ZipChain { get; init; } = new(10, "10 mm");

    /// <summary>Width of hook and loop.</summary>
    public Measure HookLoop { get; init; } = new(25, "25 mm");
}
