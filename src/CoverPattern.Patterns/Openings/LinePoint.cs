namespace CoverPattern.Patterns.Openings;

/// <summary>Where a rim crosses a line of a shell: one record, used by the faces on both sides and never computed twice.</summary>
/// <param name="Edge">Index of the shell's edge; -1 on the cut along the hem inside a face.</param>
/// <param name="Face">Index of that face at the hem; -1 on an edge.</param>
/// <param name="Share">Share of the whole edge from its first node, of the hem's cut from where its face begins to run along it; 0 to 1.</param>
public readonly record struct LinePoint(int Edge, int Face, double Share);
