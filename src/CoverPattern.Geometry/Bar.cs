namespace CoverPattern.Geometry;

/// <summary>A straight bar between two joints.</summary>
/// <param name="From">Index of one joint.</param>
/// <param name="To">Index of the other.</param>
/// <param name="Length">Length it has to have, millimetres.</param>
public readonly record struct Bar(int From, int To, double Length);
