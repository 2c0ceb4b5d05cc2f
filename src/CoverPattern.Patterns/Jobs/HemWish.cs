namespace CoverPattern.Patterns.Jobs;

/// <summary>The finished lower edge.</summary>
/// <param name="Depth">Cloth turned up inside, not negative.</param>
/// <param name="TurnUnder">Cloth turned under the raw edge of the hem, not negative.</param>
public sealed record HemWish(Measure Depth, Measure TurnUnder)
{
    /// <summary>How the edge is finished and held.</summary>
    public HemKind Kind { get; init; }

    /// <summary>Diameter of the pipe, rod or rope in a sleeve; null in other hems.</summary>
    public Measure? Pipe { get; init; }

    /// <summary>On either side of a base hub the length without turned-up cloth in a sleeve; null in other hems.</summary>
    public Measure? Gap { get; init; }

    /// <summary>Width of the webbing in the hem; null in other hems.</summary>
    public Measure? Webbing { get; init; }

    /// <summary>Where it is held; null when no points are to be marked.</summary>
    public HemFixings? Fixings { get; init; }

    /// <summary>Cloth beyond depth and turn-under, cut off on the frame; null when the hem is made in the shop.</summary>
    public Measure? Fitting { get; init; }

    /// <summary>Cloth that is folded, millimetres.</summary>
    public double Folded => Depth.Millimetres + TurnUnder.Millimetres;

    /// <summary>Cloth beyond the finished edge, millimetres.</summary>
    public double Allowance => Folded + (Fitting?.Millimetres ?? 0);
}
