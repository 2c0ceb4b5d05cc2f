namespace CoverPattern.Patterns.Jobs;

/// <summary>How loudly a notice speaks.</summary>
public enum NoticeLevel
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Look at it before cutting.</summary>
    Warning,

    /// <summary>Somebody may be hurt; defers to local codes and licensed practice.</summary>
    Caution,
}
