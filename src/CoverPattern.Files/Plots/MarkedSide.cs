namespace CoverPattern.Files.Plots;

/// <summary>Which side of the cloth a machine marks, as the cloth lies on its table.</summary>
public enum MarkedSide
{
    /// <summary>The side that faces the tool.</summary>
    Up,

    /// <summary>The side that lies on the table: the plot is mirrored across the roll.</summary>
    Table,
}
