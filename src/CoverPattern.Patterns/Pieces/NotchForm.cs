namespace CoverPattern.Patterns.Pieces;

/// <summary>How a notch is made in the edge of the cloth.</summary>
public enum NotchForm
{
    /// <summary>A cut of a quarter of the allowance, 4 mm at most.</summary>
    Slit,

    /// <summary>A stroke of the pen; for edges that must not be cut.</summary>
    Tick,
}
