namespace CoverPattern.Patterns.Jobs;

/// <summary>A measured length.</summary>
/// <param name="Name">Class, such as "A", or the two hubs of one strut, such as "H0.07-H1.03".</param>
/// <param name="Length">The length.</param>
public readonly record struct StrutLength(string Name, Measure Length);
