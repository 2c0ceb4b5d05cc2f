using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Pieces;

/// <summary>How a hem folds.</summary>
/// <param name="Depth">Cloth turned up, millimetres.</param>
/// <param name="TurnUnder">Cloth turned under behind it, millimetres.</param>
internal readonly record struct HemFold(double Depth, double TurnUnder)
{
    /// <summary>Whether the allowance runs on straight at its ends, to be cut and folded on the frame.</summary>
    internal bool IsForFitting { get; init; }

    /// <summary>Length without allowance at either end, millimetres; 0 when the hem runs through.</summary>
    internal double Gap { get; init; }

    internal static HemFold Of(HemWish hem) => new(hem.Depth.Millimetres, hem.TurnUnder.Millimetres)
    {
        IsForFitting = hem.Fitting is { Millimetres: > 0 },
        Gap = hem.Gap?.Millimetres ?? 0,
    };
}
