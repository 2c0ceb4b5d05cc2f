namespace CoverPattern.Patterns.Jobs;

/// <summary>The finished lower edge.</summary>
/// <param name="Depth">Cloth turned up inside, not negative.</param>
/// <param name="TurnUnder">Cloth turned under the raw edge of the hem, not negative.</param>
public sealed record HemWish(Measure Depth, Measure TurnUnder)
{
    /// <summary>Cloth beyond the finished edge, millimetres.</summary>
    public double Allowance => Depth.Millimetres + TurnUnder.Millimetres;
}
