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

    /// <summary>A place gives more or fewer pieces than there are plies, or pieces of unlike patterns.</summary>
    WrongPlies,

    /// <summary>A piece lies on a flawed area that it does not bear.</summary>
    OnFlaw,

    /// <summary>A piece is turned as the job does not allow.</summary>
    WrongTurn,

    /// <summary>A piece that was to stay lies elsewhere.</summary>
    Moved,

    /// <summary>A lay is longer than the table, runs off its roll or into another lay of it.</summary>
    TooLong,

    /// <summary>Width, spacing, end allowance, side or plies are not those that the job asks for.</summary>
    NotAsAsked,
}
