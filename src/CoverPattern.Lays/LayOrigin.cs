namespace CoverPattern.Lays;

/// <summary>Where a lay comes from.</summary>
public enum LayOrigin
{
    /// <summary>Made from nothing.</summary>
    Made,

    /// <summary>Searched on from lays that the job names.</summary>
    Continued,

    /// <summary>Taken from lays that the job names, as they are.</summary>
    Kept,
}
