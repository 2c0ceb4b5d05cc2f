namespace CoverPattern.Patterns.Openings;

/// <summary>What one edge of a cell lies on: a line of the shell or a rim.</summary>
/// <param name="Line">Index of the shell's edge; -1 on the cut along the hem; without meaning on a rim.</param>
/// <param name="Part">Which part of that line, counted from its first node, crossings dividing it; on a rim which part of the stretch, breaks dividing it.</param>
/// <param name="Region">Index of the region whose rim it is; -1 on a line.</param>
/// <param name="Stretch">Index of the rim's stretch; -1 on a line.</param>
internal readonly record struct CellEdge(int Line, int Part, int Region, int Stretch)
{
    internal bool IsRim => Region >= 0;

    internal static CellEdge OnLine(int line, int part) => new(line, part, -1, -1);

    internal static CellEdge OnRim(int region, int stretch, int part) => new(-1, part, region, stretch);
}
