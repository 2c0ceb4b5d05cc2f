namespace CoverPattern.Lays;

/// <summary>What can be wrong with a lay.</summary>
public enum LayFault
{
    /// <summary>Two pieces share cloth.</summary>
    Overlap,

    /// <summary>Two pieces are closer than asked.</summary>
    TooClose,

    /// <summary>A piece reaches out of the usable width, into an end allowance, or beyond what can be proved.</summary>
    Outside,

    /// <summary>A piece lies on no lay.</summary>
    Missing,

    /// <summary>A piece lies twice.</summary>
    Twice,

    /// <summary>A label that no piece of this cloth bears.</summary>
    Unknown,

    /// <summary>A piece lies the wrong side up.</summary>
    WrongSide,

    /// <summary>A shift that is not on the grid.</summary>
    OffGrid,

    /// <summary>The stated length is not that of the pieces and the end allowances.</summary>
    WrongLength,
}
