namespace CoverPattern.Lays;

/// <summary>Something wrong with a lay.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Piece">Label of the piece it concerns; empty when it concerns the whole lay.</param>
/// <param name="Other">Label of the other piece; empty when there is none.</param>
/// <param name="Text">Sentence for people, with labels, numbers and limits.</param>
public sealed record LayFinding(LayFault Fault, string Piece, string Other, string Text);
