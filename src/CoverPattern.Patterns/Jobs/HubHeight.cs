namespace CoverPattern.Patterns.Jobs;

/// <summary>A height stated for one base hub.</summary>
/// <param name="Hub">Label of the hub, such as "H0.07".</param>
/// <param name="Height">May be negative.</param>
public sealed record HubHeight(string Hub, Measure Height);
