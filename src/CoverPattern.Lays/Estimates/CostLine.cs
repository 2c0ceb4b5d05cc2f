namespace CoverPattern.Lays.Estimates;

/// <summary>One line of a cost: a quantity and its rate.</summary>
/// <param name="What">What is counted, such as "cloth canvas" or "seams, plain".</param>
/// <param name="Quantity">How much of it, over all covers.</param>
/// <param name="Unit">"m" or "pieces".</param>
/// <param name="Each">Of cloth money for one, of work minutes for one; null when the rate is missing.</param>
/// <param name="Minutes">Of work the time; null for cloth, and when the rate is missing.</param>
/// <param name="Amount">Money; null when a rate is missing.</param>
public sealed record CostLine(string What, double Quantity, string Unit, double? Each, double? Minutes, double? Amount);
