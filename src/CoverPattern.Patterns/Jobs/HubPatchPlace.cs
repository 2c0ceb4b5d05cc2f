namespace CoverPattern.Patterns.Jobs;

/// <summary>On which side of the cover patches lie over hubs.</summary>
public enum HubPatchPlace
{
    /// <summary>No patches.</summary>
    None,

    /// <summary>Inside, against wear.</summary>
    Inside,

    /// <summary>Outside, against water.</summary>
    Outside,

    /// <summary>One inside, one outside.</summary>
    Both,
}
