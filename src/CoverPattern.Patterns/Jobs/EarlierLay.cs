using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A lay of an earlier result or one moved by hand, as a job names it; what it was made for stands in the job, not here.</summary>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="Number">Which lay of this cloth it is, from 1.</param>
/// <param name="Places">Where the pieces lie, in lay coordinates.</param>
public sealed record EarlierLay(string Cloth, int Number, ImmutableArray<EarlierPlace> Places)
{
    /// <summary>Which roll of the cloth it is cut from, from 1; 0 when the job names no rolls.</summary>
    public int Roll { get; init; }

    /// <summary>Where on the roll it begins, millimetres from its cut end.</summary>
    public double FromMm { get; init; }

    /// <summary>Plies that are cut at once.</summary>
    public int Plies { get; init; } = 1;
}
