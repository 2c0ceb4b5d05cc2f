namespace CoverPattern.Lays.Nesting;

/// <summary>How far a search has come.</summary>
/// <param name="UnitsDone">Work units spent.</param>
/// <param name="Units">Work units to spend in all: the task's effort.</param>
/// <param name="Length">Length of the shortest layout so far, millimetres; infinite while there is none.</param>
public readonly record struct NestingProgress(int UnitsDone, int Units, double Length);
