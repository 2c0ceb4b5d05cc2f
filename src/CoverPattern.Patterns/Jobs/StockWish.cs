namespace CoverPattern.Patterns.Jobs;

/// <summary>Bars of stock that the struts are cut from.</summary>
/// <param name="Bar">Length of a bar.</param>
/// <param name="Kerf">What the saw takes at a cut.</param>
public sealed record StockWish(Measure Bar, Measure Kerf);
