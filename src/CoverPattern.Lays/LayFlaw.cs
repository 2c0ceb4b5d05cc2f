namespace CoverPattern.Lays;

/// <summary>A flawed area as it lies on a lay: an upright rectangle in lay coordinates, millimetres on the grid.</summary>
/// <param name="X">Where it begins along the roll.</param>
/// <param name="Y">Where it begins across the roll.</param>
/// <param name="LongMm">Extent along.</param>
/// <param name="WideMm">Extent across.</param>
/// <param name="LeastGrade">Least grade of the pieces that may lie on it; null: none may.</param>
public sealed record LayFlaw(double X, double Y, double LongMm, double WideMm, int? LeastGrade)
{
    /// <summary>The ply it is on, counted from the table up, which is the order off the roll.</summary>
    public int Ply { get; init; } = 1;
}
