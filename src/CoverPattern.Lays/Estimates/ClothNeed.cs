namespace CoverPattern.Lays.Estimates;

/// <summary>Running metres of one cloth: what the lays take, and apart from it what is spare.</summary>
/// <param name="Cloth">Name of the cloth.</param>
/// <param name="RollWidthMm">Full width, millimetres.</param>
/// <param name="LaysMm">All lays with their end allowances, millimetres.</param>
/// <param name="SpareMm">For mistakes and test strips, millimetres; in no other number.</param>
public sealed record ClothNeed(string Cloth, double RollWidthMm, double LaysMm, double SpareMm)
{
    // 5 % for mistakes and half a metre of test strip off each roll (common practice, no source); a cloth counts as one roll.
    private const double SpareShare = 0.05;
    private const double TestStrip = 500;

    /// <summary>The need of one cloth with its spare.</summary>
    /// <param name="cloth">Name of the cloth.</param>
    /// <param name="rollWidthMm">Full width, millimetres.</param>
    /// <param name="laysMm">All lays, millimetres.</param>
    public static ClothNeed Of(string cloth, double rollWidthMm, double laysMm) => new(cloth, rollWidthMm, laysMm, (SpareShare * laysMm) + TestStrip);
}
