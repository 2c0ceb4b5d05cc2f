using System.Collections.Immutable;

namespace CoverPattern.Lays.Estimates;

/// <summary>Strip, zip or tie that goes into seams or along the hem.</summary>
/// <param name="What">"binding", "zip", "tie", "webbing" or "hem binding".</param>
/// <param name="MakeUp">Name of the construction that takes it; empty for ties and along the hem.</param>
/// <param name="Count">How many seams take one; how many ties; along the hem, how many lengths.</param>
/// <param name="LengthMm">Sewn length together, nothing added for ends, millimetres.</param>
/// <param name="WidthMm">Width of a binding to be cut, millimetres; 0 for a zip; width of a tie's tape or of webbing.</param>
public sealed record NotionEstimate(string What, string MakeUp, int Count, double LengthMm, double WidthMm)
{
    /// <summary>To buy, ends added, in the lengths in which it is sold, millimetres.</summary>
    public double BuyMm { get; init; }

    /// <summary>Zips one by one, as they are bought, shortest first; none of what is bought by the running length.</summary>
    public ImmutableArray<NotionSize> Sizes { get; init; } = [];

    /// <summary>Whether these are zips whose halves come apart.</summary>
    public bool IsSeparating { get; init; }

    /// <summary>Stops of zips, two each; 0 elsewhere.</summary>
    public int Stops { get; init; }
}
