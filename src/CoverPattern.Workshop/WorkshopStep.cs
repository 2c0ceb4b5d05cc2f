namespace CoverPattern.Workshop;

/// <summary>How far a run has come.</summary>
/// <param name="Stage">What is being done, in the shop's words.</param>
/// <param name="Share">Share of the stage that is done, 0 to 1.</param>
/// <param name="Detail">What the stage has reached, such as the shortest lay so far; may be empty.</param>
public readonly record struct WorkshopStep(string Stage, double Share, string Detail);
