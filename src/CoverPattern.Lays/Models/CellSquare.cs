namespace CoverPattern.Lays.Models;

/// <summary>A square of cells.</summary>
/// <param name="X">Its last column.</param>
/// <param name="Y">Its last row.</param>
/// <param name="Side">How many cells wide and high it is.</param>
internal readonly record struct CellSquare(int X, int Y, int Side)
{
    /// <summary>The largest square of taken cells in a mask, the first of several.</summary>
    internal static CellSquare In(CellMask mask)
    {
        var (sides, best) = (mask.Squares(taken: true), 0);
        for (var at = 1; at < sides.Length; at++)
        {
            best = sides[at] > sides[best] ? at : best;
        }

        return new CellSquare(best % mask.Width, best / mask.Width, sides[best]);
    }
}
