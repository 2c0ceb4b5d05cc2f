namespace CoverPattern.Lays.Nesting;

/// <summary>Something wrong with a layout.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="First">Index of the placement it concerns; of the item for a wrong count; -1 for the layout.</param>
/// <param name="Second">Index of the other placement; -1 when there is none.</param>
/// <param name="Text">Sentence for people, with numbers and limits.</param>
public sealed record NestingFinding(NestingFault Fault, int First, int Second, string Text);
