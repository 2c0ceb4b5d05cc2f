namespace CoverPattern.Patterns.Jobs;

/// <summary>What an opening is for: which parts fill it, and which sides of its rim open.</summary>
public enum OpeningKind
{
    /// <summary>Closed rim; filled by a sheet, a screen or nothing.</summary>
    Window,

    /// <summary>From the finished edge up, to walk through; filled by a flap.</summary>
    Door,

    /// <summary>From the finished edge up, to let air in; filled by a flap that rolls up.</summary>
    BaseVent,

    /// <summary>Closed rim under a hood; a screen is sewn in, a flap inside closes it.</summary>
    HighVent,

    /// <summary>A line along which the cover is cut and closed by a zip.</summary>
    Slit,
}
