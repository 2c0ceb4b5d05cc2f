namespace CoverPattern.Files.Exchange;

/// <summary>Forms of notches in an exchange file; the number is their layer.</summary>
public enum ExchangeNotchKind
{
    /// <summary>A slit or a V.</summary>
    Slit = 4,

    /// <summary>A slit with a bar at its end.</summary>
    Tee = 80,

    /// <summary>A rectangle.</summary>
    Castle = 81,

    /// <summary>A V with one side square to the edge.</summary>
    Check = 82,

    /// <summary>A rectangle with a round end.</summary>
    Round = 83,
}
