using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Lays;

/// <summary>What was used to make a lay, so that it can be told, and made again.</summary>
/// <param name="Origin">Where it comes from.</param>
/// <param name="Style">What it was made for.</param>
/// <param name="Method">Name of the method that found it, such as "search".</param>
/// <param name="Turns">How pieces might turn: "none", "half" or "free".</param>
/// <param name="OffGrainDegrees">How far the grain might run off those turns.</param>
/// <param name="InHoles">Whether pieces might lie in the openings of others.</param>
public sealed record LayMaking(LayOrigin Origin, LayStyle Style, string Method, string Turns, double OffGrainDegrees, bool InHoles)
{
    /// <summary>What is taken for lays that do not say.</summary>
    public static LayMaking Plain { get; } = new(LayOrigin.Made, LayStyle.Tight, string.Empty, "half", 0, InHoles: true);

    /// <summary>For a lay by hand: the length that the tight one has, end allowances included, millimetres; null where none was made.</summary>
    public double? TightMm { get; init; }
}
