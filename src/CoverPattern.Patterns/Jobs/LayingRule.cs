namespace CoverPattern.Patterns.Jobs;

/// <summary>How an outline is laid over edges.</summary>
public enum LayingRule
{
    /// <summary>Carried where no hub is inside, else projected.</summary>
    Either,

    /// <summary>Carried: at its exact size along the cloth; refused where a hub is inside.</summary>
    Carried,

    /// <summary>Projected square to the facet that holds its middle; its sizes on the cloth are larger.</summary>
    Projected,
}
