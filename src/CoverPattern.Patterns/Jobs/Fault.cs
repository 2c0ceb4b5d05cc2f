namespace CoverPattern.Patterns.Jobs;

/// <summary>Something in the job that makes it impossible to go on.</summary>
/// <param name="Place">Dotted place in the job file, such as "cloths[0].rollWidth"; empty for the whole file.</param>
/// <param name="Said">What the job said there.</param>
/// <param name="Allowed">What would be allowed, and the way out.</param>
public sealed record Fault(string Place, string Said, string Allowed);
